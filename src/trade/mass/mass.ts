import { fact, type ResultFacts } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import * as moment from './moment.ts'

export interface Item {
  readonly massKg: Given
  readonly armM: Given
}

/** Arms grow to the rear. */
export interface Limits {
  readonly forwardM: Given
  readonly rearwardM: Given
}

export interface Mass {
  readonly before: Item
  /** Parts put on, and parts taken off with negative mass. */
  readonly adds: readonly Item[]
  readonly limits: Limits | null
}

export const massKg = fact('massKg', { says: 'mass, all items together', symbol: 'm', source: SOURCES['weight-and-balance'] })
export const movedKg = fact('movedKg', { says: 'mass put on and taken off, added up', symbol: 'Δm', source: SOURCES['weight-and-balance'] })
const totalKgM = fact('momentKgM', { says: 'moment, all items together', symbol: 'M', source: SOURCES['weight-and-balance'] })

export function mass({ before, adds, limits }: Plain<Mass>) {
  const { massKg, momentKgM } = together([before, ...adds])
  const centreM = moment.centreM({ momentKgM, massKg })
  const margins = limits === null ? null : marginsAt(centreM, limits)
  return { massKg, momentKgM, centreM, changeM: moment.changeM({ centreM, oldCentreM: before.armM }), movedKg: movedBy(adds), margins }
}

/** A part taken off is a change as one put on is: the two are not set against each other. */
function movedBy(adds: readonly Plain<Item>[]): number {
  return summed(
    movedKg,
    adds.map(({ massKg }) => Math.abs(massKg))
  )
}

export function together(items: readonly Plain<Item>[]) {
  const masses = items.map(({ massKg }) => massKg)
  const moments = items.map(({ massKg, armM }) => moment.momentKgM({ massKg, armM }))
  return { massKg: summed(massKg, masses), momentKgM: summed(totalKgM, moments) }
}

/** Both positive when the centre lies between the limits; `leastM` is the lesser. */
export function marginsAt(centreM: number, { forwardM, rearwardM }: Plain<Limits>) {
  const forwardMarginM = moment.forwardMarginM({ centreM, forwardM })
  const rearwardMarginM = moment.rearwardMarginM({ centreM, rearwardM })
  return { forwardMarginM, rearwardMarginM, leastM: Math.min(forwardMarginM, rearwardMarginM) }
}

function summed(facts: ResultFacts, numbers: readonly number[]): number {
  const sum = numbers.reduce((a, b) => a + b, 0)
  recordStep(facts, sum, () => numbers.map(n => (n < 0 ? `(${Number(n.toPrecision(6))})` : `${Number(n.toPrecision(6))}`)).join(' + '))
  return sum
}
