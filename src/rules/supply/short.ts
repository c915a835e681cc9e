import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { marginA as facts } from '../../trade/supply/margin.ts'
import { atLeast, figuresApart, notJudged } from '../judge.ts'
import { type Unsure, unlessFailed } from '../missing.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** Idle, work: what the machine does. */
  readonly phase: string
  /** Null where the output is not known. */
  readonly outputA: Bounded | null
  readonly loadA: Bounded
  readonly marginA: Bounded | null
  /** What may be switched off first, in words; empty where nothing may. */
  readonly shed: string
  /** Why nobody knows what a load takes; left out where it is known. */
  readonly unsure?: Unsure | null
}

/** Whether the generator carries the loads. */
export const short: Rule<Subject> = {
  id: 'supply/short',
  question: 'does the output of the generator carry all loads, each with its duty?',
  why: 'What the generator does not give the battery gives, until it is flat.',
  change: 'switch loads off, run the engine faster, or fit a larger generator',
  source: SOURCES['14-cfr-23.1351'],
  judge: ({ phase, outputA, loadA, marginA, shed, unsure }) => {
    if (outputA === null || marginA === null)
      return notJudged('output', 'a clamp meter on the cable of the generator at the speed it runs, with every load on')
    const [gives, take] = figuresApart(outputA.low, loadA.high, facts)
    const says = `${phase}: the generator gives ${gives}, the loads take ${take}`
    const judged = unlessFailed(atLeast(facts, marginA, { value: 0 }, says), unsure)
    return judged.verdict !== 'fail' || shed === '' ? judged : { ...judged, change: `switch off first: ${shed}` }
  }
}
