import { quoted } from '../quantity/quoted.ts'
import { readPoints } from '../trade/proof/points.ts'
import { beyondShown, READING_UNIT, type Takes } from '../trade/proof/reading-unit.ts'
import type { Job } from './read-job.ts'
import type { LinkFault } from './unknown-name.ts'

type Circuit = NonNullable<Job['circuit']>

/** Every point of the circuit, in the order it is named. */
export function pointsOf({ source, runs, loads }: Circuit): readonly string[] {
  return [...new Set(['bus', source.ground, ...[...runs, ...loads].flatMap(({ from, to }) => [from, to])])]
}

/** What one reading holds besides its points. */
export function takesOf({ volts, amps, ohms }: Job['readings'][number]): readonly Takes[] {
  return [
    ...(volts === null ? [] : (['volts'] as const)),
    ...(amps === null ? [] : (['amps'] as const)),
    ...(ohms === null ? [] : (['ohms'] as const))
  ]
}

/** Readings that no circuit can have shown. */
export function readingLinks({ circuit, readings, proof }: Job): readonly LinkFault[] {
  const meters = (['volts', 'amps', 'ohms'] as const).flatMap(takes => meterLinks(takes, proof.meter[takes]))
  if (circuit === null)
    return [
      ...meters,
      ...readings.slice(0, 1).map(({ path }) => ({ found: 'readings without a circuit', accepted: 'the circuit they were taken on', path }))
    ]
  return [...meters, ...readings.flatMap(reading => linksOf(reading, circuit))]
}

function linksOf(reading: Job['readings'][number], circuit: Circuit): readonly LinkFault[] {
  const points = readPoints(reading.at, pointsOf(circuit))
  const takes = takesOf(reading)
  const { path, passing, meter } = reading
  return [
    ...(points.ok ? joinedLinks(reading, circuit, points.value) : [{ ...points.fault, path: [...path, 'at'] }]),
    ...(takes.length === 1
      ? [...meterLinks(takes[0]!, meter), ...beyondLinks(takes[0]!, reading)]
      : [
          {
            found: takes.length === 0 ? 'a reading of nothing' : `a reading of ${takes.join(' and ')}`,
            accepted: 'volts, amps or ohms, one of them',
            path
          }
        ]),
    ...(passing === null || takes[0] === 'volts'
      ? []
      : [{ found: 'a test current without volts', accepted: 'volts at a current above 0 A', path: [...path, 'passing'] }])
  ]
}

function beyondLinks(takes: Takes, reading: Job['readings'][number]): readonly LinkFault[] {
  const fault = beyondShown(takes, reading[takes]!.value)
  return fault === undefined ? [] : [{ ...fault, path: [...reading.path, takes] }]
}

/** Amps are of what joins the two points; volts and ohms are of any two. */
function joinedLinks(
  reading: Job['readings'][number],
  circuit: Circuit,
  points: { readonly red: string; readonly black: string }
): readonly LinkFault[] {
  const [takes] = takesOf(reading)
  const fault = takes === undefined ? undefined : unjoined(takes, points, circuit)
  return fault === undefined ? [] : [{ ...fault, path: [...reading.path, 'at'] }]
}

/** Why there is nothing to take such a reading of; nothing where there is something. */
export function unjoined(
  takes: Takes,
  { red, black }: { readonly red: string; readonly black: string },
  { source, runs, loads }: Circuit
): Omit<LinkFault, 'path'> | undefined {
  if (takes !== 'amps') return undefined
  const feed = { from: source.ground, to: 'bus' }
  const parts = [...runs, ...loads, feed]
  if (parts.some(({ from, to }) => (from === red && to === black) || (from === black && to === red))) return undefined
  return {
    found: `${takes} from ${quoted(red)} to ${quoted(black)}, which nothing joins`,
    accepted: parts.map(({ from, to }) => quoted(`${from} to ${to}`)).join(', ')
  }
}

function meterLinks(takes: Takes, meter: Job['readings'][number]['meter']): readonly LinkFault[] {
  if (meter === null) return []
  const { digits, resolution, path } = meter
  const unit = READING_UNIT[takes]
  return [
    ...(digits.value <= MOST_DIGITS
      ? []
      : [{ found: `an accuracy of ${digits.value} digits`, accepted: `0 to ${MOST_DIGITS} digits`, path: [...path, 'digits'] }]),
    ...(resolution === null || resolution.unit === unit
      ? []
      : [{ found: `a resolution in ${resolution.unit} for ${takes}`, accepted: `one in ${unit}`, path: [...path, 'resolution'] }])
  ]
}

const MOST_DIGITS = 100
