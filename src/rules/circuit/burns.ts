import { SOURCES } from '../../formula/source.ts'
import { statedName, walkedText } from '../../trade/circuit/fault-words.ts'
import type { StatedFault } from '../../trade/circuit/switched-walk.ts'
import { threeDigits } from '../../trade/circuit/three-digits.ts'
import type { Finding } from '../finding.ts'
import { notJudged, plainly } from '../judge.ts'
import { isMissing, type UnknownWire } from '../missing.ts'
import type { Judged, Rule } from '../rule.ts'

interface Unsaid {
  readonly name: string
  readonly at: Finding['at']
}

interface Subject {
  readonly walk: readonly StatedFault[]
  /** Single faults in positions of the switches of which nobody tells whether they may be. */
  readonly perhaps?: readonly StatedFault[]
  /** Wires whose capacity is known: without any nothing can be said. */
  readonly known: number
  /** Wires of which nobody knows what they carry, and why. */
  readonly unknown: readonly UnknownWire[]
  /** Fuses and breakers whose opening times nobody publishes, or whose rating is not given: what they clear is not known. */
  readonly silent: readonly string[]
  /** Fuses and breakers of which nobody said at which end of their run they sit: taken at that of the source. */
  readonly unsaid?: readonly Unsaid[]
}

const ASK = "give rating and a style whose opening times are published, or hold the maker's curve against this current"

/** Whether one single fault overloads a wire that nothing clears. */
export const burns: Rule<Subject> = {
  id: 'circuit/burns',
  question: 'does no single open joint or short overload a wire for good?',
  why: 'With the engine strap off the starter goes home through the thinnest wire that leads there.',
  change: 'protect that wire for what it carries, or leave it no second way to the 0 V point',
  source: SOURCES.kirchhoff,
  judge: ({ walk, perhaps = [], known, unknown, silent, unsaid = [] }) => {
    if (known === 0)
      return unknown.length > 0
        ? unknownOf(unknown)
        : notJudged('wire', 'draw the wire of each run, its insulation and how warm its place is')
    const worst = worstOf(walk)
    if (worst === undefined && unknown.length > 0) return unknownOf(unknown)
    if (worst === undefined) {
      const maybe = worstOf(perhaps)
      return maybe === undefined ? placed(`${walkedText(walk)}: none does`, unsaid) : unsure(maybe)
    }
    const says = overText(worst)
    if (silent.length > 0) return { ...plainly('not-judged', `${says}; when ${silent.join(', ')} opens is not known`), change: ASK }
    return plainly('fail', `${says}, and nothing is sure to clear it`)
  }
}

type Over = StatedFault['overloads'][number] & { readonly name: string }

/** Of what nothing is sure to clear, the wire that is furthest above what it is good for. */
function worstOf(walk: readonly StatedFault[]): Over | undefined {
  const found = walk.flatMap(one =>
    one.overloads.filter(({ clearedS }) => !Number.isFinite(clearedS)).map(over => ({ ...over, name: statedName(one) }))
  )
  return found.toSorted((a, b) => b.currentA / b.ampacityA - a.currentA / a.ampacityA)[0]
}

function overText({ name, id, currentA, ampacityA }: Over): string {
  return `${name}: ${id} carries ${threeDigits(currentA)} A, it is good for ${threeDigits(ampacityA)} A`
}

function unsure(worst: Over): Judged {
  const says = `${overText(worst)}, and nothing is sure to clear it; whether the switches can stand so is not told`
  return { ...plainly('not-judged', says), change: 'draw them so where they can; else see that they cannot' }
}

/** The reason of the first; those of another reason are named. */
function unknownOf(unknown: readonly UnknownWire[]): Judged {
  const { lacks } = unknown[0]!
  const named = (some: readonly UnknownWire[]) => some.map(({ id }) => id).join(', ')
  const alike = unknown.filter(one => reasonOf(one) === reasonOf(unknown[0]!))
  const others = unknown.filter(one => !alike.includes(one))
  const rest = others.length === 0 ? '' : `; nor of ${named(others)} (${[...new Set(others.map(reasonOf))].join(', ')})`
  const says = `whether ${named(alike)} burns is not known`
  if (isMissing(lacks)) return notJudged(lacks.field, `${says}: ${lacks.measure}${rest}`, lacks.at)
  return { ...plainly('not-judged', `${says}: ${lacks.says}${rest}`), change: lacks.change }
}

function reasonOf({ lacks }: UnknownWire): string {
  return isMissing(lacks) ? `${lacks.field} is not given` : lacks.says
}

/** Wire before a protector that sits at the far end of its run is nobody's to save. */
function placed(says: string, unsaid: readonly Unsaid[]): Judged {
  if (unsaid.length === 0) return plainly('pass', says)
  const doubt = `${unsaid.map(({ name }) => name).join(', ')} taken at the source's end of the run: at which end is not said`
  const change = 'say with along where on the wire of its run a fuse or breaker sits'
  return { ...plainly('caution', `${says}; ${doubt}`), change, assumes: unsaid.map(({ at }) => at) }
}
