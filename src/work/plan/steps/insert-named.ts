import type { Step } from '../../../report/plan/plan.ts'
import { thingName } from '../../../report/plan/thing-name.ts'
import { readThread } from '../../../trade/thread/designation.ts'
import type { Thread } from '../../../trade/thread/thread.ts'
import type { HoleInWork, JudgedJob } from '../../job/judged-job.ts'
import { step } from '../step.ts'

/** The insert that the job names; one for another thread than that of its holes is not put in the drawer. */
export function drawer({ 'way-back': back }: JudgedJob['job']['ask-first'], holes: readonly HoleInWork[]): readonly Step[] {
  if (back === null || NONE.test(back.insert)) return []
  const named = threadsIn(back.insert)
  const without = named.length === 0 ? [] : holes.filter(({ part }) => !named.some(thread => isSame(thread, part.thread)))
  if (without.length === 0) return [step('ask first', '', `have the way back in the drawer: insert ${back.insert}`)]
  const missing = without.map(({ place, part }) => `${thingName(place)} has ${part.thread.name}`).join(', ')
  return [
    step('ask first', '', `settle which insert goes into the drawer: the job names ${back.insert}, and ${missing}`, {
      caution: 'an insert for another thread is no way back',
      blank: 'inserts in the drawer'
    })
  ]
}

/** None is in the drawer: each hole has its own step that settles the way back. */
const NONE = /^\s*(?:none|no|nothing|no insert)\s*[.;,]?\s*$/i

/** No designation has more words than `1/4 - 20 UNC`. */
const MOST_WORDS = 4

/** Every thread that a text names, each by as many words as belong to it. */
function threadsIn(text: string): readonly Thread[] {
  const words = text.split(/[\s,;()]+/).filter(word => word !== '')
  const found: Thread[] = []
  for (let i = 0; i < words.length; ) {
    const read = threadAt(words, i)
    if (read !== undefined) found.push(read.thread)
    i += read?.count ?? 1
  }
  return found
}

function threadAt(words: readonly string[], from: number) {
  for (let count = MOST_WORDS; count > 0; count--) {
    const read = readThread(words.slice(from, from + count).join(' '))
    if (read.ok && from + count <= words.length) return { thread: read.value, count }
  }
  return undefined
}

function isSame(a: Thread, b: Thread): boolean {
  return a.majorMm === b.majorMm && a.pitchMm === b.pitchMm
}
