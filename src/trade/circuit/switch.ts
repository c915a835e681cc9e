import type { Given, Plain } from '../../formula/given.ts'
import { LEAST_SILVER_V, MOST_SWITCH_V, neededRatingA, type SwitchLoad, switchRow } from './switch-factor.ts'
import { makeA } from './switch-inrush.ts'
import { threeDigits } from './three-digits.ts'

export interface SwitchGiven {
  readonly busV: Given
  readonly currentA: Given
  readonly load: SwitchLoad
  /** Of a heater that draws more when cold; null for none. */
  readonly coldRatio: Given | null
  readonly rating: { readonly supply: 'dc' | 'ac' | 'not said'; readonly ratingA: Given } | null
}

/** What a switch must be rated for; above the table no less than at its last row. The seconds a cold PTC heater draws more are carried current, so the larger of the two is asked for. */
export function switchNeed(x: Plain<SwitchGiven>) {
  const row = switchRow({ ...x, busV: Math.min(x.busV, MOST_SWITCH_V) })
  const steadyA = neededRatingA({ currentA: x.currentA, switchFactor: row.switchFactor })
  const closingA = makeA({ currentA: x.currentA, coldRatio: x.coldRatio ?? 1 })
  const neededA = Math.max(steadyA, closingA)
  return {
    busV: x.busV,
    row: row.row,
    switchFactor: row.switchFactor,
    makeA: closingA,
    neededA,
    marginA: x.rating === null || x.rating.supply !== 'dc' ? null : x.rating.ratingA - neededA,
    says: [...(x.busV > MOST_SWITCH_V ? [aboveTable(x.busV)] : [row.says]), ...cautions(x)]
  }
}

function aboveTable(busV: number): string {
  return `no factor of a switch is printed above ${MOST_SWITCH_V} V, and the bus has ${threeDigits(busV)} V: ask its maker`
}

function cautions({ busV, rating }: Plain<SwitchGiven>): readonly string[] {
  const silver = busV < LEAST_SILVER_V ? [`silver contacts need ${LEAST_SILVER_V} V or more`] : []
  if (rating?.supply === 'ac')
    return [...silver, 'an AC rating says nothing on DC, where the arc is not put out by the current passing nought']
  if (rating?.supply === 'not said')
    return [...silver, 'look up the DC rating of the switch: what is printed first on a switch is often its AC rating']
  return silver
}
