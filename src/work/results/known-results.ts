import type { ResultFacts } from '../../formula/formula.ts'
import { DEW_RESULTS } from './dew-results.ts'
import { DROP_RESULTS, LOAD_RESULTS } from './drop-results.ts'
import { HEATER_RESULTS } from './heater-results.ts'
import { HOLE_RESULTS } from './hole-results.ts'
import { JOINT_RESULTS, TORQUE_RESULT } from './joint-results.ts'
import { MASS_RESULTS } from './mass-results.ts'
import { PROTECT_RESULTS } from './protect-results.ts'
import { SEAT_RESULTS } from './seat-results.ts'
import { SUPPLY_RESULTS } from './supply-results.ts'
import { WARM_RESULTS } from './warm-results.ts'
import { wireResults } from './wire-results.ts'

const MAPS: { readonly [room: string]: { readonly [id: string]: readonly unknown[] } } = {
  hole: HOLE_RESULTS,
  seat: SEAT_RESULTS,
  joint: { ...JOINT_RESULTS, ...TORQUE_RESULT },
  heater: HEATER_RESULTS,
  drop: { ...DROP_RESULTS, 'rated-share': LOAD_RESULTS['drop.rated-share']! },
  dew: DEW_RESULTS,
  warm: WARM_RESULTS,
  mass: MASS_RESULTS,
  wire: wireResults(null),
  protect: PROTECT_RESULTS,
  supply: SUPPLY_RESULTS
}

/** A result id with the room that gives it, and what it is. */
export interface KnownResult {
  readonly id: string
  readonly name: string
  readonly facts: ResultFacts
}

/** Every result that a room lists by its id, as `hole.tip-depth`. */
export const KNOWN_RESULTS: readonly KnownResult[] = Object.entries(MAPS).flatMap(([room, map]) =>
  Object.entries(map).map(([id, row]) => {
    const [facts, , name] = row as readonly [ResultFacts, unknown, string?]
    return { id: `${room}.${id}`, name: name ?? facts.says, facts }
  })
)
