import type { Diagnostic } from '../quantity/diagnostic.ts'
import { good } from '../quantity/fault.ts'
import { readThread } from '../trade/thread/designation.ts'
import { readClass } from '../trade/thread/tolerance-class.ts'
import type { Run } from './describe.ts'
import { quickSum } from './quick-sum.ts'
import { refusal, refusalOf } from './refusal.ts'
import { thread as description } from './thread.ts'
import { identified, readTaper } from './thread-identified.ts'
import { listed } from './thread-listed.ts'
import { shown } from './thread-shown.ts'
import type { Words } from './words.ts'

/** A class that was only assumed gives way to one that stands in the designation. */
const readers = {
  designation: readThread,
  class: (text: string, assumed?: string) => good(assumed === undefined ? text : null),
  taper: readTaper
}

type ThreadWords = Words<typeof description.rows, typeof readers>

export const run: Run = quickSum(description, readers, words => {
  const mixed = mixedUp(words)
  if (mixed !== undefined) return mixed
  if (words.list) return listed()
  if (words.measured !== null) return identified({ ...words, measured: words.measured })
  const { designation: thread, engagement } = words
  if (thread === null) return refusal('<designation>', 'nothing', 'a thread, as M12x1.5 or 3/8-24 UNF, or --measured, or --list')
  if (engagement !== null && thread.system === 'unified')
    return refusal('--engagement', `--engagement with ${thread.name}`, 'an ISO metric thread: groups of engagement are those of ISO 965-1')
  const toleranceClass = readClass(words.class, thread)
  if (!toleranceClass.ok) return refusalOf('--class', toleranceClass.fault)
  return shown({ thread, toleranceClass: toleranceClass.value, engagement, assumed: words.class === null })
})

/** A thread by its name and a thread by its measures are two questions. */
function mixedUp({ designation, measured, pitch, taper, internal }: ThreadWords): readonly Diagnostic[] | undefined {
  if (measured !== null && designation !== null) return refusal('--measured', '--measured beside a designation', 'one of the two')
  const measures = { '--pitch': pitch !== null, '--taper': taper !== null, '--internal': internal }
  const [alone] = Object.entries(measures).find(([, given]) => given) ?? []
  return measured === null && alone !== undefined
    ? refusal(alone, `${alone} without --measured`, 'the measured diameter as well')
    : undefined
}
