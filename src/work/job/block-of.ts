import { boundsOf } from '../../formula/bounds.ts'
import type { Job } from '../../job/read-job.ts'
import { UNTOLD_SURFACE } from '../../job/taken.ts'
import { isMissing, type Missing } from '../../rules/missing.ts'
import type { Block, Capacity, Loss } from '../../trade/heat/block.ts'
import { CONTACTS } from '../../trade/heat/contact.ts'
import { EMISSIVITIES } from '../../trade/heat/emissivity.ts'
import { givenOf } from '../../trade/heat/figure.ts'
import type { Film } from '../../trade/heat/film.ts'
import { fitHeatTest } from '../../trade/heat/heat-test.ts'
import type { Body } from '../../trade/heat/heated-parts.ts'
import { heldByTest } from './tested-otherwise.ts'

export type JobWarm = NonNullable<Job['warm']>
export type FittedTest = ReturnType<typeof fitHeatTest>
/** The air as the film has to know it. */
export type AirIs = 'moving' | 'still'

/** Heat capacity and loss from the readings of a heat test, where there is one. */
export function fittedTest({ 'heat-test': test }: JobWarm): FittedTest | null {
  if (test === null) return null
  const readings = test.readings.map(({ at, metal }) => ({ timeS: at.value, blockC: metal.value }))
  return fitHeatTest({ powerW: test.power, airC: test.air, readings, readingK: test.accuracy.high, at: [...test.path, 'readings'] })
}

/** The casting in moving air or in still air, as far as the job tells it: a heat test goes before everything else. */
export function blockOf({ warm, surroundings }: Job & { readonly warm: JobWarm }, air: AirIs, test: FittedTest | null): Block | Missing {
  const capacity = capacityOf(warm, test)
  if (isMissing(capacity)) return capacity
  const loss = lossOf(warm, surroundings, { air, test })
  if (isMissing(loss)) return loss
  const job = warm['heat-test']
  const isComputed = loss.by === 'surface' && test !== null && job !== null && surroundings !== null
  const held = isComputed ? heldByTest({ air, loss, altitudeM: surroundings.altitude }, job, test) : loss
  return { capacity, loss: held, body: bodyOf(warm.body) }
}

function capacityOf({ mass, material, path }: JobWarm, test: FittedTest | null): Capacity | Missing {
  if (test !== null) return { by: 'test', capacityJPerK: test.capacityJPerK }
  if (mass === null) return { field: 'warm.mass', measure: 'weigh it, work it out from its volume, or run a heat test', at: path }
  if (material === null) return { field: 'warm.material', measure: 'ask for the alloy, or run a heat test', at: path }
  return { by: 'mass', massKg: mass, heatJPerKgK: material.heatJPerKgK, metal: material.metal }
}

interface Wanted {
  readonly air: AirIs
  readonly test: FittedTest | null
}

function lossOf(warm: JobWarm, surroundings: Job['surroundings'], { air, test }: Wanted): Loss | Missing {
  if (test !== null && warm['heat-test']?.['air-was'] === air) return { by: 'test', lossWPerK: test.lossWPerK }
  if (warm.area === null)
    return { field: 'warm.area', measure: `lay foil around it and measure that, or run a heat test in ${air} air`, at: warm.path }
  const film = air === 'moving' ? movingFilm(warm, surroundings) : stillFilm(warm)
  if (isMissing(film)) return film
  return {
    by: 'surface',
    areaM2: warm.area,
    film,
    emissivityRatio: warm.emissivity === null ? UNTOLD_SURFACE : givenOf(EMISSIVITIES[warm.emissivity], [...warm.path, 'emissivity']),
    machineWPerK: warm.machine
  }
}

function movingFilm(warm: JobWarm, surroundings: Job['surroundings']): Film | Missing {
  const { film, size, correlation: by, path } = warm
  if (film !== null) return { by: 'value', filmWPerM2K: film }
  const airflow = surroundings?.airflow ?? null
  if (airflow === null) return { field: 'surroundings.airflow', measure: 'an anemometer beside the casting with the machine running' }
  if (airflow.high === 0) return stillFilm(warm)
  if (size === null)
    return { field: 'warm.size', measure: 'measure it across the air where it is round, along it where it is flat', at: path }
  return { by, airflowMPerS: airflow, sizeMm: size }
}

/** The same shape when the air stops: a round one lies level, a flat one stands. */
function stillFilm({ 'still-film': film, size, correlation, path }: JobWarm): Film | Missing {
  if (film !== null) return { by: 'value', filmWPerM2K: film }
  if (size === null) return { field: 'warm.size', measure: 'measure it across where it is round, its height where it is flat', at: path }
  return { by: correlation.endsWith('plate') ? 'vertical-plate' : 'horizontal-cylinder', sizeMm: size }
}

/** The heated part as a body of its own, where it is told as one. */
export function bodyOf(body: JobWarm['body']): Body | null {
  if (body === null) return null
  return {
    massKg: body.mass,
    heatJPerKgK: body.material.heatJPerKgK,
    contactMm2: body.contact,
    contactM2KPerW: givenOf(CONTACTS[body.joint].contactM2KPerW, [...body.path, 'joint'])
  }
}

/** The fitted figures as results, with their bounds. */
export function testBounds({ capacityJPerK, lossWPerK }: FittedTest) {
  return boundsOf({ capacityJPerK, lossWPerK }, x => x)
}
