import type { circuitFit } from '../../fitting/circuit-fit.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import type { ResultMap } from '../../report/result-map.ts'
import { ampacityA } from '../../trade/circuit/ampacity.ts'
import * as load from '../../trade/circuit/load.ts'
import { loadPercent } from '../../trade/circuit/protection.ts'
import { allowedLoadA } from '../../trade/circuit/protection-ambient.ts'
import { MOST_SWITCH_V, neededRatingA } from '../../trade/circuit/switch-factor.ts'
import { makeA } from '../../trade/circuit/switch-inrush.ts'
import { shortA } from '../../trade/circuit/wire-short.ts'

type Circuit = ReturnType<typeof circuitFit>
type Short = Circuit['shorts'][number]

const conductorC = fact('conductorC', { says: 'temperature of the conductor', symbol: 'Tc', source: SOURCES.practice })
const endC = fact('endC', { says: 'conductor when a short at the far end is cleared', symbol: 'Tk', source: SOURCES['iec-60364-5-54'] })
const ratingA = fact('ratingA', { says: 'rating', symbol: 'In', source: SOURCES['rating-series'] })
const limitA = fact('wireLimitA', { says: 'largest rating that its wire may have', symbol: 'Iw', source: SOURCES.practice })
const opensS = (says: string, symbol: string) => fact('openingS', { says, symbol, source: SOURCES['blade-sheet'] })
const breakingA = fact('breakingA', { says: 'largest current it can break', symbol: 'Ib', source: SOURCES['iso-8820-3'] })
const shiftV = fact('shiftV', { says: 'ground shift: voltage against 0 V', symbol: 'Ug', source: SOURCES.kirchhoff })

/** The wire of a run. */
export const RUN_RESULTS: ResultMap<Circuit['runs'][number] & { readonly worst: NonNullable<Short['wires'][number]['short']> | null }> = {
  'wire.current': [load.currentA, r => r.currentA, 'current in the wire'],
  'wire.ampacity': [ampacityA, r => r.ampacityA],
  'wire.conductor-temperature': [conductorC, r => r.conductorC],
  'wire.short-circuit-temperature': [endC, r => (r.worst?.edge === 'unknown' ? null : r.worst?.endC)]
}

/** A fuse or breaker, with the short it has to clear that has the least current. */
export const PROTECTOR_RESULTS: ResultMap<Circuit['protectors'][number] & { readonly far: Short | null }> = {
  'protect.rating': [ratingA, r => r.ratingA],
  'protect.load-percent': [loadPercent, r => r.loadPercent],
  'protect.load.allowed': [allowedLoadA, r => r.allowed?.allowedA],
  'protect.wire-limit': [limitA, r => r.limit?.wireLimitA],
  'protect.fault': [shortA, r => r.far?.faultA, 'short at the far end, bus low and wire hot'],
  'protect.opening-time.shortest': [opensS('opens no sooner, at that short', 't1'), r => r.far?.shortestS],
  'protect.opening-time.longest': [
    opensS('opens at the latest, at that short', 't2'),
    r => (r.far?.edge === 'unknown' ? null : r.far?.longestS)
  ],
  'protect.inrush.opening-time.shortest': [opensS('opens no sooner, at the inrush', 'ti'), r => r.inrushShortestS],
  'protect.fault-near': [shortA, r => r.nearA, 'prospective short right behind it, a plain conductor in its place'],
  'protect.breaking-capacity': [breakingA, r => r.breakingA]
}

export const SWITCH_RESULTS: ResultMap<Circuit['switches'][number]> = {
  'protect.switch.needed': [neededRatingA, r => (r.busV.high > MOST_SWITCH_V ? null : r.neededA)],
  'protect.switch.make': [makeA, r => r.makeA]
}

export const GROUND_RESULTS: ResultMap<Circuit['groundPoints'][number]> = {
  'ground.shift': [shiftV, r => r.shiftV]
}
