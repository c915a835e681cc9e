import { quoted } from '../quantity/quoted.ts'
import { ratedLinks } from './rated-link.ts'
import type { Job } from './read-job.ts'
import { type LinkFault, unknownName } from './unknown-name.ts'

/** Fewer say nothing of three figures and how far they may be off. */
const LEAST_READINGS = 5

/** What only fits together, or not, in the parts of a job on heat and mass. */
export function heatLinks(job: Job): readonly LinkFault[] {
  return [...airLinks(job), ...heaterLinks(job), ...coolingLinks(job), ...thermostatLinks(job), ...testLinks(job), ...massLinks(job)]
}

function airLinks({ surroundings }: Job): readonly LinkFault[] {
  if (surroundings === null) return []
  return [...hotDay(surroundings), ...twoMoistures(surroundings), ...warmBulb(surroundings)]
}

type Surroundings = NonNullable<Job['surroundings']>

function hotDay({ air, hot, path }: Surroundings): readonly LinkFault[] {
  if (hot === null || hot.high >= air.low) return []
  return [{ found: 'a hottest day that is colder than the coldest', accepted: 'hot at air or above', path: [...path, 'hot'] }]
}

function twoMoistures({ humidity, 'wet-bulb': wetBulb, path }: Surroundings): readonly LinkFault[] {
  if (humidity === null || wetBulb === null) return []
  return [{ found: 'a wet bulb beside the humidity', accepted: 'one of the two', path: [...path, 'wet-bulb'] }]
}

function warmBulb({ air, 'wet-bulb': wetBulb, path }: Surroundings): readonly LinkFault[] {
  if (wetBulb === null || wetBulb.value <= air.value) return []
  return [{ found: 'a wet bulb that is warmer than its air', accepted: 'wet-bulb at air or below', path: [...path, 'wet-bulb'] }]
}

function heaterLinks(job: Job): readonly LinkFault[] {
  const { warm } = job
  return warm === null ? [] : warm.heaters.flatMap((name, i) => ratedLinks(job, name, [...warm.path, 'heaters', i]))
}

function coolingLinks({ warm }: Job): readonly LinkFault[] {
  if (warm === null || warm.cooling === null) return []
  const { fall, 'fuel-air': fuelAir, throat, path } = warm.cooling
  const flow = fuelAir !== null || throat !== null
  if (fall === null && !flow) return [{ found: 'cooling of nothing', accepted: 'fall, as 0 K, or fuel-air and throat', path }]
  return fall !== null && flow ? [{ found: 'a fall beside what makes it', accepted: 'fall alone, or fuel-air and throat', path }] : []
}

function thermostatLinks({ warm }: Job): readonly LinkFault[] {
  if (warm === null || warm.thermostat === null) return []
  const { off, on, path } = warm.thermostat
  if (on === null || on.value < off.value) return []
  return [{ found: 'a thermostat that closes where it opens, or hotter', accepted: 'on below off', path: [...path, 'on'] }]
}

function testLinks({ warm }: Job): readonly LinkFault[] {
  const test = warm?.['heat-test'] ?? null
  if (test === null || test.readings.length >= LEAST_READINGS) return []
  const count = test.readings.length
  return [
    {
      found: count === 0 ? 'no readings' : count === 1 ? 'one reading' : `${count} readings`,
      accepted: `${LEAST_READINGS} readings or more, until the rise has plainly slowed`,
      path: [...test.path, 'readings']
    }
  ]
}

function massLinks({ mass, parts }: Job): readonly LinkFault[] {
  return (mass?.adds ?? []).flatMap(({ part, mass: own, path }) => {
    if (part === null) return own === null ? [{ found: 'a change without a mass', accepted: 'mass, or the part that it is', path }] : []
    if (own !== null) return [{ found: 'a mass beside the part', accepted: 'one of the two', path: [...path, 'mass'] }]
    const at = [...path, 'part']
    if (!Object.hasOwn(parts, part)) return unknownName(part, Object.keys(parts), { what: 'part' }, at)
    return parts[part]!.mass === null
      ? [{ found: `the part ${quoted(part)} without a mass`, accepted: 'a part with its mass', path: at }]
      : []
  })
}
