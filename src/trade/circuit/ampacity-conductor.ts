import type { WireSize } from './wire-size.ts'

/** A conductor as it is asked for. Gauges run 0, −1 (00), −2 (000), −3 (0000). */
export type Conductor = { readonly standard: 'awg'; readonly awg: number } | { readonly standard: 'mm2'; readonly areaMm2: number }

export function conductorBySize(size: WireSize): Conductor {
  return size.system === 'awg' ? { standard: 'awg', awg: size.gaugeCount } : { standard: 'mm2', areaMm2: size.sectionMm2 }
}

/** Section of the solid gauge by ASTM B258, rounded up: a metric conductor of at least this size is read at this gauge. */
const LEAST_AREAS_MM2: ReadonlyMap<number, number> = new Map([
  [24, 0.2048],
  [22, 0.3256],
  [20, 0.5177],
  [18, 0.8231],
  [16, 1.309],
  [14, 2.082],
  [12, 3.309],
  [10, 5.262],
  [8, 8.367],
  [6, 13.31],
  [4, 21.16],
  [3, 26.68],
  [2, 33.64],
  [1, 42.41],
  [0, 53.49],
  [-1, 67.44],
  [-2, 85.03],
  [-3, 107.3]
])

/** The largest of the gauges that is not larger than the conductor: where a table does not print a size, the next smaller one is read. */
export function gaugeFor(conductor: Conductor, gauges: readonly number[]): number | undefined {
  const fits = gauges.filter(awg => (conductor.standard === 'awg' ? awg >= conductor.awg : leastAreaMm2(awg) <= conductor.areaMm2))
  return fits.length === 0 ? undefined : Math.min(...fits)
}

function leastAreaMm2(awg: number): number {
  return LEAST_AREAS_MM2.get(awg) ?? Number.POSITIVE_INFINITY
}

/** Nought of a gauge that no table has. */
export function sectionMm2(conductor: Conductor): number {
  return conductor.standard === 'mm2' ? conductor.areaMm2 : (LEAST_AREAS_MM2.get(conductor.awg) ?? 0)
}

export function gaugeName(awg: number): string {
  return `AWG ${awg > 0 ? awg : '0'.repeat(1 - awg)}`
}

export function conductorName(conductor: Conductor): string {
  return conductor.standard === 'awg' ? gaugeName(conductor.awg) : `${conductor.areaMm2} mm²`
}
