import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import type { Column, Table } from '../../report/answer.ts'
import type { ResultMap } from '../../report/result-map.ts'
import { ampacityA } from '../../trade/circuit/ampacity.ts'
import * as feed from '../../trade/circuit/feed.ts'
import type { WireGiven, wire } from '../../trade/circuit/wire.ts'
import { figureOf, type WireOffer } from '../../trade/circuit/wire-choice.ts'
import { shortA } from '../../trade/circuit/wire-short.ts'

const size = fact('sizeCount', { says: 'smallest wire that does it', symbol: '', source: SOURCES.arithmetic })
const loadedC = fact('loadedC', { says: 'conductor, warmed by its current', symbol: 'Tc', source: SOURCES.practice })
const shortEndC = fact('endC', {
  says: 'conductor at the end of a short at the far end',
  symbol: 'Tk',
  source: SOURCES['iec-60364-5-54']
})

/** `null` for the name where no size does it. */
export function wireResults(name: string | null): ResultMap<ReturnType<typeof wire>> {
  return {
    size: [size, () => name],
    ampacity: [ampacityA, r => r.ampacityA],
    drop: [feed.dropV, r => r.dropV, 'drop there and back, at the temperature of the surroundings'],
    'drop-percent': [feed.dropPercent, r => r.dropPercent],
    'drop.warm': [feed.dropV, r => r.warmDropV, 'drop there and back, warmed by its current'],
    current: [feed.fedA, r => r.currentA, 'current'],
    'conductor-temperature': [loadedC, r => r.loadedC],
    fault: [shortA, r => r.short?.faultA],
    'short-circuit-temperature': [shortEndC, r => r.short?.endC]
  }
}

const COLUMNS: readonly Column[] = [
  { key: 'size', name: 'size', unit: '' },
  { key: 'ampacity', name: 'carries', unit: 'A', shown: 'current' },
  { key: 'drop', name: 'drops', unit: 'V', shown: 'voltage' },
  { key: 'drop-percent', name: 'drops', unit: '%', shown: 'percent' },
  { key: 'short-circuit-temperature', name: 'in a short', unit: '°C', shown: 'temperature' },
  { key: 'chosen', name: 'taken', unit: '' },
  { key: 'rejected', name: 'what speaks against it', unit: '' }
]

/** Every size, each number at its worst end; drop warmed by the current. */
export function offersTable(offers: readonly WireOffer[], chosen: WireOffer | undefined): Table {
  return { name: 'candidates, each at its worst end', columns: COLUMNS, rows: offers.map(offer => rowOf(offer, offer === chosen)) }
}

function rowOf({ conductor, bounds, rejected }: WireOffer, chosen: boolean) {
  return {
    size: conductor.size.name,
    ampacity: end(bounds?.ampacityA, 'low'),
    current: end(bounds?.currentA, 'high'),
    drop: end(bounds?.warmDropV, 'high'),
    'drop-percent': end(bounds?.warmDropPercent, 'high'),
    'short-circuit-temperature': end(bounds?.short?.endC, 'high'),
    'smallest-allowed': !rejected.some(reason => reason.startsWith('smallest ')),
    chosen,
    rejected: rejected.join('; ')
  }
}

function end(bounded: Bounded | null | undefined, side: 'low' | 'high'): number | null {
  const value = bounded?.[side]
  return value === undefined || !Number.isFinite(value) ? null : value
}

/** Where what a practice allows says little of how warm a wire gets. */
export function warmsOtherwise(figure: ReturnType<typeof figureOf>): readonly string[] {
  if (figure.kind === 'no figure' || figure.warmsAs.startsWith(figure.table)) return []
  return [`how warm it gets is reckoned from ${figure.warmsAs}, less what its bundle and altitude take off`]
}

/** The conditions that stand behind the figures. */
export function wireCautions(given: WireGiven): readonly string[] {
  const figure = figureOf(given)
  const printed =
    figure.kind === 'no figure'
      ? [figure.says]
      : [
          `${figure.table}: ${figure.holdsFor}; ${figure.says}`,
          ...[figure.bundle, figure.ambient, figure.altitude].filter(({ status }) => status !== 'none').map(({ says }) => says),
          ...warmsOtherwise(figure),
          ...(figure.freeAirA === null ? [] : [`one such wire in free air: ${figure.freeAirA.toFixed(1)} A, for comparison only`])
        ]
  const { protector } = given
  return [
    ...printed,
    protector === null
      ? 'no medium blade fuse does for this load and bus: judge the short circuit with the protector in hand'
      : `the short circuit is reckoned behind a blade fuse of ${protector.ratingA.value} A, the smallest for this load, from a stiff source`,
    "joints are not in the drop; the maker's figures for the wire in hand, local codes and a licensed electrician go before this"
  ]
}
