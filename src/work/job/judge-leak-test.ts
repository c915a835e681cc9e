import type { Job } from '../../job/read-job.ts'
import { testGas } from '../../rules/leak/test-gas.ts'
import { asked } from '../../rules/rule.ts'
import { burnsBehind } from '../behind/burns-behind.ts'
import { gasOf } from '../behind/test-gas.ts'
import type { JudgedThing } from './judged-thing.ts'

/** The leak test of a job that names one. */
export function judgeLeakTest({ 'ask-first': ask }: Job): JudgedThing {
  const test = ask['leak-test']
  if (test === null) return { results: [], findings: [] }
  const { medium } = test
  const subject = { medium, gas: gasOf(medium, ask), behind: ask['behind-the-metal'], burns: burnsBehind(ask) }
  return { results: [], findings: [asked(testGas, subject)] }
}
