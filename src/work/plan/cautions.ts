import { mayLeak } from '../behind/behind-the-metal.ts'
import type { JudgedJob } from '../job/judged-job.ts'
import { jams, swapsOf, swapText } from './swaps.ts'

/** What stands over the whole work, whatever the sums say. */
export function cautionsOf(judged: JudgedJob): readonly string[] {
  const { job, answer } = judged
  const { findings } = answer
  const failing = findings.filter(({ verdict }) => verdict === 'fail').length
  const unjudged = findings.filter(({ verdict }) => verdict === 'not-judged').length
  const heater = Object.values(job.parts).some(({ kind }) => kind === 'heater')
  return [
    ...(failing > 0 ? [`do not start: ${count(failing, 'rule')} of this job ${failing === 1 ? 'fails' : 'fail'}`] : []),
    ...(unjudged > 0 ? [`${count(unjudged, 'question')} of this job could not be judged: measure first what is missing`] : []),
    "a sum is as good as what was measured: the maker's instructions, local codes and licensed practice go before all of it",
    ...swapsOf(judged).filter(jams).map(swapText),
    ...(mayLeak(job)
      ? ['where what is behind the metal burns, or its vapour does: no spark and no flame until it is flushed and aired']
      : []),
    ...(heater ? ['a heater of tens of watts warms metal; it is no protection against icing'] : [])
  ]
}

function count(n: number, what: string): string {
  return `${n} ${what}${n === 1 ? '' : 's'}`
}
