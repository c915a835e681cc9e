import { acceptedBounds, acceptedSpan, acceptedText } from './accepted.ts'
import { checkText } from './check-text.ts'
import { Exact } from './exact.ts'
import { bad, good, type Outcome } from './fault.ts'
import { type Kind, rowOf } from './kinds.ts'
import { plainNumber } from './plain-number.ts'
import { quoted } from './quoted.ts'
import { readRange } from './read-range.ts'
import { valueOfTerm } from './read-term.ts'
import { readTolerance } from './read-tolerance.ts'
import { scan, type Term } from './scan.ts'
import { bothSides, likelyRange, shapeOf } from './shape.ts'

/** A quantity somebody wrote, in the house unit of its kind, with its bounds. */
export interface Amount {
  readonly value: number
  readonly low: number
  readonly high: number
  /** As it was written. */
  readonly text: string
}

/** From here to there; no number between is more meant than another. */
export interface Span {
  readonly low: number
  readonly high: number
  readonly text: string
}

const HALF = new Exact(1n, 2n)

export function parseQuantity(kind: Kind, text: string): Outcome<Amount> {
  const value = rowOf(kind).whole === true ? undefined : plainNumber(kind, text)
  return value === undefined ? parsedInFull(kind, text) : good({ value, low: value, high: value, text })
}

function parsedInFull(kind: Kind, text: string): Outcome<Amount> {
  const checked = checkText(kind, text)
  if (!checked.ok) return checked
  const terms = scan(checked.value)
  const amount = amountOf(kind, terms, text)
  return amount.ok && rowOf(kind).whole === true ? whole(kind, amount.value) : amount
}

/** Two ends and nothing else: the range of a wrench, the limits of a centre of mass. */
export function parseSpan(kind: Kind, text: string): Outcome<Span> {
  const checked = checkText(kind, text)
  if (!checked.ok) return checked
  const terms = scan(checked.value)
  if (shapeOf(terms) !== 'range') return bad(`${quoted(text)} is no range`, acceptedSpan(kind), likelyRange(terms))
  const ends = readRange(kind, terms)
  return ends.ok ? good({ low: ends.value.low.valueOf(), high: ends.value.high.valueOf(), text }) : ends
}

function amountOf(kind: Kind, terms: readonly Term[], text: string): Outcome<Amount> {
  switch (shapeOf(terms)) {
    case 'plain':
      return plain(kind, terms[0]!, text)
    case 'range':
      return ranged(kind, terms, text)
    case 'tolerance':
      return toleranced(kind, terms, text)
    case 'one side':
      return oneSided(kind, terms, text)
    case 'none':
      return bad(`${quoted(text)} cannot be read as a quantity`, acceptedBounds(kind))
  }
}

function plain(kind: Kind, term: Term, text: string): Outcome<Amount> {
  const read = valueOfTerm(kind, term)
  return read.ok ? good({ value: read.value, low: read.value, high: read.value, text }) : read
}

function ranged(kind: Kind, terms: readonly Term[], text: string): Outcome<Amount> {
  const read = readRange(kind, terms)
  if (!read.ok) return read
  const { low, high } = read.value
  return good({ value: low.plus(high).times(HALF).valueOf(), low: low.valueOf(), high: high.valueOf(), text })
}

function toleranced(kind: Kind, terms: readonly Term[], text: string): Outcome<Amount> {
  const read = readTolerance(kind, terms)
  if (!read.ok) return read
  const { nominal, low, high } = read.value
  return good({ value: nominal.valueOf(), low: low.valueOf(), high: high.valueOf(), text })
}

function whole(kind: Kind, amount: Amount): Outcome<Amount> {
  const { value, low, high, text } = amount
  return [value, low, high].every(Number.isInteger) ? good(amount) : bad(`${quoted(text)} is not whole`, acceptedText(kind))
}

/** The correction is only named where it can be read. */
function oneSided(kind: Kind, terms: readonly Term[], text: string): Outcome<Amount> {
  const near = likelyRange(terms) ?? bothSides(terms)
  const readable = amountOf(kind, scan(near), near).ok
  return bad(`a tolerance with one side, ${quoted(text)}`, acceptedBounds(kind), readable ? near : undefined)
}
