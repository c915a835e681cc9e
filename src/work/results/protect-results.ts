import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import type { Column, Table } from '../../report/answer.ts'
import type { ResultMap } from '../../report/result-map.ts'
import type { guardedWire } from '../../trade/circuit/guarded-wire.ts'
import { heldA, loadPercent } from '../../trade/circuit/protection.ts'
import { allowedLoadA } from '../../trade/circuit/protection-ambient.ts'
import type { RatingChoice } from '../../trade/circuit/protection-rating.ts'
import { MOST_SWITCH_V, neededRatingA } from '../../trade/circuit/switch-factor.ts'
import { makeA } from '../../trade/circuit/switch-inrush.ts'

const rating = fact('ratingA', { says: 'rating of the protector', symbol: 'In', source: SOURCES['rating-series'] })
const wireLimit = fact('wireLimitA', { says: 'largest rating that the practice allows this wire', symbol: 'Iw', source: SOURCES.practice })
const opens = (says: string, symbol: string) => fact('openingS', { says, symbol, source: SOURCES['blade-sheet'] })
const breaking = fact('breakingA', { says: 'largest current it can break', symbol: 'Ib', source: SOURCES['iso-8820-3'] })
const overload = fact('overloadC', {
  says: 'wire at an overload that it clears slowly or never',
  symbol: 'To',
  source: SOURCES.practice
})
const shortEnd = fact('endC', { says: 'wire at the end of the short', symbol: 'Tk', source: SOURCES['iec-60364-5-54'] })

export const PROTECT_RESULTS: ResultMap<ReturnType<typeof guardedWire>> = {
  rating: [rating, r => r.ratingA],
  'load-percent': [loadPercent, r => r.loadPercent],
  'load.allowed': [allowedLoadA, r => r.allowed?.allowedA],
  'wire-limit': [wireLimit, r => r.limit.wireLimitA],
  'opening-time.shortest': [opens('opens no sooner, at the fault', 't1'), r => r.opening?.shortestS],
  'opening-time.longest': [
    opens('opens at the latest, at the fault', 't2'),
    r => (r.opening?.edge === 'unknown' ? null : r.opening?.longestS)
  ],
  'inrush.opening-time.shortest': [opens('opens no sooner, at the inrush', 'ti'), r => r.inrush?.steps.at(0)?.shortestS],
  'overload.held': [heldA, r => r.overload?.heldA],
  'overload-temperature': [overload, r => (r.heating?.edge === 'published' ? r.heating.overloadC : null)],
  'short-circuit-temperature': [shortEnd, r => (r.short?.edge === 'unknown' ? null : r.short?.endC)],
  'breaking-capacity': [breaking, r => r.breakingA],
  'switch.needed': [neededRatingA, r => (r.contacts === null || r.contacts.busV.high > MOST_SWITCH_V ? null : r.contacts.neededA)],
  'switch.make': [makeA, r => r.contacts?.makeA]
}

const COLUMNS: readonly Column[] = [
  { key: 'rating', name: 'rating', unit: 'A', shown: 'ratio' },
  { key: 'load-percent', name: 'load', unit: '%', shown: 'percent' },
  { key: 'chosen', name: 'taken', unit: '' },
  { key: 'rejected', name: 'what speaks against it', unit: '' }
]

/** Every rating that the style is sold in, with what speaks against it. */
export function ratingsTable({ candidates }: RatingChoice, chosenA: number | null): Table {
  const rows = candidates.map(({ ratingA, loadPercent, rejected }) => ({
    rating: ratingA,
    'load-percent': loadPercent,
    chosen: ratingA === chosenA,
    rejected: rejected.join('; ')
  }))
  return { name: 'ratings, each need at its worst end', columns: COLUMNS, rows }
}
