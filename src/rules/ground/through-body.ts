import { SOURCES } from '../../formula/source.ts'
import { plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly load: string
  readonly point: string
  /** What leads from the heater alone: a wire, a joint that was drawn, or nothing, so that its body is its terminal. */
  readonly leaves: 'by wire' | 'by a joint' | 'by its body'
  /** What is on the threads when it goes in; null where nobody told. */
  readonly threadsWith: string | null
}

/** What keeps metal from metal. */
const INSULATES: readonly (string | null)[] = ['sealant', 'locking-compound', 'thermal-compound']

/** Whether a heater has a way back of its own, or comes back through the joint of its body with the casting. */
export const throughBody: Rule<Subject> = {
  id: 'ground/through-body',
  question: 'does the heater come back by a wire or by a joint that was measured?',
  why: 'A body that is its own terminal comes back through flanks and shoulder, which oxidise, and which compound and sealant keep apart.',
  change: 'draw its way back: a lead with its wire, or the joint of its body as a run with its measured bond',
  source: SOURCES.practice,
  judge: ({ load, point, leaves, threadsWith }) => {
    const sealed = INSULATES.includes(threadsWith)
    if (leaves === 'by wire') return plainly('pass', `${load} comes back by a wire of its own from ${point}`)
    if (leaves === 'by a joint')
      return sealed
        ? plainly(
            'caution',
            `${load} comes back by the joint at ${point}, and there is ${threadsWith} on its threads: nothing that is counted on conducts through it`
          )
        : plainly('pass', `${load} comes back by the joint at ${point}`)
    const says = `no lead or joint of ${load} alone is drawn at ${point}: it comes back through its own body`
    if (sealed) return plainly('fail', `${says}, with ${threadsWith} on its threads`)
    return plainly('caution', `${says}, and that joint is taken as of no resistance`)
  }
}
