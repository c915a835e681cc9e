import { SOURCES } from '../../formula/source.ts'
import type { WalkedFault } from '../../trade/circuit/fault-walk.ts'
import { faultName } from '../../trade/circuit/fault-words.ts'
import { threeDigits } from '../../trade/circuit/three-digits.ts'
import { notJudged, plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly walk: readonly WalkedFault[]
  /** Wires whose capacity is known: without any nothing can be said. */
  readonly known: number
  /** Wires of which nobody told how they lie. */
  readonly unknown: readonly string[]
  /** Fuses and breakers whose opening times nobody publishes, or whose rating is not given: what they clear is not known. */
  readonly silent: readonly string[]
}

const ASK = "give rating and a style whose opening times are published, or hold the maker's curve against this current"

/** Whether one single fault overloads a wire that nothing clears. */
export const burns: Rule<Subject> = {
  id: 'circuit/burns',
  question: 'does no single open joint or short overload a wire for good?',
  why: 'With the engine strap off the starter goes home through the thinnest wire that leads there.',
  change: 'protect that wire for what it carries, or leave it no second way to the 0 V point',
  source: SOURCES.kirchhoff,
  judge: ({ walk, known, unknown, silent }) => {
    if (known === 0) return notJudged('insulation', 'read on each wire what its insulation is rated for, and say how warm its place is')
    const found = walk.flatMap(({ fault, overloads }) =>
      overloads.filter(({ clearedS }) => !Number.isFinite(clearedS)).map(one => ({ ...one, name: faultName(fault) }))
    )
    const worst = found.toSorted((a, b) => b.currentA / b.ampacityA - a.currentA / a.ampacityA)[0]
    if (worst === undefined && unknown.length > 0)
      return {
        ...notJudged('insulation', `what ${unknown.join(', ')} may carry is not known: read the insulation, and say how warm its place is`)
      }
    if (worst === undefined) return plainly('pass', `${walk.length} single faults walked at the nominal: none does`)
    const { name, id, currentA, ampacityA } = worst
    const says = `${name}: ${id} carries ${threeDigits(currentA)} A, it is good for ${threeDigits(ampacityA)} A`
    if (silent.length > 0) return { ...plainly('not-judged', `${says}; when ${silent.join(', ')} opens is not known`), change: ASK }
    return plainly('fail', `${says}, and nothing is sure to clear it`)
  }
}
