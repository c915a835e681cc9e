import type { ResultFacts } from '../../formula/formula.ts'
import { GROUND_RESULTS, PROTECTOR_RESULTS, RUN_RESULTS, SWITCH_RESULTS } from './circuit-results.ts'
import { DEW_RESULTS } from './dew-results.ts'
import { DROP_RESULTS, LOAD_RESULTS } from './drop-results.ts'
import { HEAT_TEST_RESULTS } from './heat-test-results.ts'
import { HEATER_RESULTS } from './heater-results.ts'
import { HOLE_RESULTS } from './hole-results.ts'
import { JOINT_RESULTS, TORQUE_RESULT } from './joint-results.ts'
import { LOADED_RESULTS, MASS_RESULTS } from './mass-results.ts'
import { PROTECT_RESULTS } from './protect-results.ts'
import { SEAT_RESULTS } from './seat-results.ts'
import { SUPPLY_RESULTS } from './supply-results.ts'
import { WARM_RESULTS } from './warm-results.ts'
import { HOT_RESULTS, WARMED_RESULTS, WINDOW_RESULTS } from './warmed-results.ts'
import { wireResults } from './wire-results.ts'

const MAPS: { readonly [room: string]: { readonly [id: string]: readonly unknown[] } } = {
  hole: HOLE_RESULTS,
  seat: SEAT_RESULTS,
  joint: { ...JOINT_RESULTS, ...TORQUE_RESULT },
  heater: HEATER_RESULTS,
  drop: DROP_RESULTS,
  dew: DEW_RESULTS,
  warm: WARM_RESULTS,
  mass: { ...MASS_RESULTS, ...LOADED_RESULTS },
  wire: wireResults(null),
  protect: PROTECT_RESULTS,
  supply: SUPPLY_RESULTS
}

/** Those that stand in jobs alone have their room in their id. */
const OF_JOBS: { readonly [id: string]: readonly unknown[] } = {
  ...LOAD_RESULTS,
  ...RUN_RESULTS,
  ...PROTECTOR_RESULTS,
  ...SWITCH_RESULTS,
  ...GROUND_RESULTS,
  ...WARMED_RESULTS,
  ...HOT_RESULTS,
  ...WINDOW_RESULTS,
  ...HEAT_TEST_RESULTS
}

/** A result id with the room that gives it, and what it is. */
export interface KnownResult {
  readonly id: string
  readonly name: string
  readonly facts: ResultFacts
}

/** Every result by its id, as `hole.tip-depth`; that of a room goes before that of a job of the same id. */
export const KNOWN_RESULTS: readonly KnownResult[] = knownResults()

function knownResults(): readonly KnownResult[] {
  const ofRooms = Object.entries(MAPS).flatMap(([room, map]) => Object.entries(map).map(([id, row]) => known(`${room}.${id}`, row)))
  const ids = new Set(ofRooms.map(({ id }) => id))
  return [...ofRooms, ...Object.entries(OF_JOBS).flatMap(([id, row]) => (ids.has(id) ? [] : [known(id, row)]))]
}

function known(id: string, row: readonly unknown[]): KnownResult {
  const [facts, , name] = row as readonly [ResultFacts, unknown, string?]
  return { id, name: name ?? facts.says, facts }
}
