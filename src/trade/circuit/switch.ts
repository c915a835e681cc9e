import type { Given, Plain } from '../../formula/given.ts'
import { LEAST_SILVER_V, MOST_SWITCH_V, neededRatingA, type SwitchLoad, type SwitchRow, switchRow } from './switch-factor.ts'
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

/** One of the loads behind a switch. */
export interface SwitchedLoad {
  readonly name: string
  readonly currentA: number
  readonly load: SwitchLoad
  /** Current at switch-on over the steady one; not told, it is at least what its resistance tells. */
  readonly cold: { readonly by: 'told'; readonly ratio: number } | { readonly by: 'not known'; readonly leastRatio: number }
}

export interface SwitchedLoads extends Plain<Pick<SwitchGiven, 'busV' | 'rating'>> {
  readonly loads: readonly SwitchedLoad[]
}

/** What a switch of one load must be rated for. */
export function switchNeed({ busV, currentA, load, coldRatio, rating }: Plain<SwitchGiven>) {
  return switchNeeds({ busV, rating, loads: [{ name: 'the load', currentA, load, cold: { by: 'told', ratio: coldRatio ?? 1 } }] })
}

/**
 * What a switch must be rated for, load by load; above the table no less than at its last row. The seconds a cold PTC heater draws more
 * are carried current, so the larger of the two is asked for. A load whose inrush is not known closes by the factor of its kind, or by
 * what its resistance tells where that is more.
 */
export function switchNeeds({ busV, loads, rating }: SwitchedLoads) {
  const rows = loads.map(({ load }) => switchRow({ busV: Math.min(busV, MOST_SWITCH_V), load }))
  const steady = loads.map(({ currentA }, i) => neededRatingA({ currentA, switchFactor: rows[i]!.switchFactor }))
  const closing = loads.map(({ currentA, cold }, i) =>
    cold.by === 'not known' ? Math.max(steady[i]!, currentA * cold.leastRatio) : makeA({ currentA, coldRatio: cold.ratio })
  )
  const neededA = Math.max(sumOf(steady), sumOf(closing))
  return {
    busV,
    row: rows[0]!.row,
    factors: factorsOf(loads, rows),
    makeA: loads.some(({ cold }) => cold.by === 'not known') ? null : sumOf(closing),
    neededA,
    marginA: rating === null || rating.supply !== 'dc' ? null : rating.ratingA - neededA,
    says: [...(busV > MOST_SWITCH_V ? [aboveTable(busV)] : [rows[0]!.says]), ...cautions({ busV, rating })]
  }
}

function sumOf(amps: readonly number[]): number {
  return amps.reduce((sum, one) => sum + one, 0)
}

/** In words, by how much each load counts. */
function factorsOf(loads: readonly SwitchedLoad[], rows: readonly SwitchRow[]): string {
  const [first] = rows
  if (rows.every(({ switchFactor }) => switchFactor === first!.switchFactor)) return `the load times ${first!.switchFactor}`
  return loads.map(({ name }, i) => `${name} times ${rows[i]!.switchFactor}`).join(', ')
}

function aboveTable(busV: number): string {
  return `no factor of a switch is printed above ${MOST_SWITCH_V} V, and the bus has ${threeDigits(busV)} V: ask its maker`
}

function cautions({ busV, rating }: Omit<SwitchedLoads, 'loads'>): readonly string[] {
  const silver = busV < LEAST_SILVER_V ? [`silver contacts need ${LEAST_SILVER_V} V or more`] : []
  if (rating?.supply === 'ac')
    return [...silver, 'an AC rating says nothing on DC, where the arc is not put out by the current passing nought']
  if (rating?.supply === 'not said')
    return [...silver, 'look up the DC rating of the switch: what is printed first on a switch is often its AC rating']
  return silver
}
