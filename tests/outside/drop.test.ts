// table: drop along a wire against published examples (rows/drop.ts) and one job worked by hand
import { describe, expect, it } from 'vitest'
import { Given, plainOf } from '../../src/formula/given.ts'
import type { Conductor } from '../../src/trade/circuit/conductor.ts'
import * as copper from '../../src/trade/circuit/copper.ts'
import { drop } from '../../src/trade/circuit/drop.ts'
import { truck, wire } from '../trade/circuit/invented.ts'
import { CIRCULAR_MILS, HOT_RUN, LEAST_GAUGES, RUNS } from './rows/drop.ts'

const M_PER_FT = 0.3048

interface Run {
  readonly conductor: Conductor
  readonly lengthFt: number
  readonly currentA: number
  readonly conductorC?: number
}

/** One wire alone, at 12 V. */
function along({ conductor, lengthFt, currentA, conductorC = 20 }: Run) {
  return drop({
    conductor,
    lengthM: lengthFt * M_PER_FT,
    back: { by: 'structure' },
    conductorC,
    jointsOhm: 0,
    load: { takes: 'current', currentA, busV: 12 }
  })
}

describe('one wire', () => {
  it.each(RUNS)('$id $size $lengthFt ft $currentA A: $printed V', ({ size, lengthFt, currentA, printed }) => {
    const half = 0.5 * 10 ** -printed.split('.')[1]!.length
    expect(Math.abs(along({ conductor: wire(size, 'aircraft'), lengthFt, currentA }).dropV - Number(printed))).toBeLessThanOrEqual(half)
  })

  // The chart rounds by a rule of its own: its gauge must do, and one two sizes thinner must not.
  it.each(LEAST_GAUGES)('$id $currentA A, $bothWaysFt ft in all, $percent %: AWG $gauge', ({ currentA, bothWaysFt, percent, gauge }) => {
    const at = (awg: number) => along({ conductor: wire(`AWG ${awg}`, 'solid'), lengthFt: bothWaysFt, currentA }).dropPercent!
    expect(at(gauge)).toBeLessThanOrEqual(percent)
    expect(at(gauge + 4)).toBeGreaterThan(percent)
  })

  it.each([60, 105, 150])(`${HOT_RUN.id} a run at %d °C may be 254.5/(234.5 + t) of the cold one`, conductorC => {
    const conductor = wire('AWG 10', 'aircraft')
    const hotFt = (254.5 * 100) / (234.5 + conductorC)
    const [cold, hot] = [along({ conductor, lengthFt: 100, currentA: 5 }), along({ conductor, lengthFt: hotFt, currentA: 5, conductorC })]
    expect(hot.dropV).toBeCloseTo(cold.dropV, 9)
  })

  it(`${CIRCULAR_MILS.id} annealed copper at 20 °C needs about 3.5 % less than 10.75 circular mil·ohm/ft`, () => {
    const oneCircularMilMm2 = (Math.PI / 4) * 0.0254 ** 2
    const ohmPerFt = copper.solidOhmPerM({ solidMm2: oneCircularMilMm2 }) * M_PER_FT
    expect(100 * (1 - ohmPerFt / Number(CIRCULAR_MILS.printed))).toBeCloseTo(3.5, 1)
  })
})

// Status: invented data, hand arithmetic, checked with a separate script. Half of the last digit shown is allowed.
describe('filter-head heater of a 24 V truck', () => {
  const WORKED = [
    { size: '1.5 mm2', loopOhm: '0.2430', currentA: '3.275', dropV: '0.796', dropPercent: '2.95', loadW: '85.8' },
    { size: '2.5 mm2', loopOhm: '0.1538', currentA: '3.311', dropV: '0.509', dropPercent: '1.89', loadW: undefined },
    { size: '4 mm2', loopOhm: '0.1030', currentA: '3.332', dropV: '0.343', dropPercent: '1.27', loadW: undefined }
  ] as const

  it.each(WORKED)('$size loses $dropPercent %', ({ size, ...shown }) => {
    const results = drop(plainOf(truck(size)).plain)
    for (const [name, printed] of Object.entries(shown)) {
      if (printed === undefined) continue
      const half = 0.5 * 10 ** -printed.split('.')[1]!.length
      expect(Math.abs(results[name as keyof typeof results]! - Number(printed)), name).toBeLessThanOrEqual(half)
    }
  })

  it.each(WORKED)('$size runs the heater above its 72 W: the bus is 27 V, not 24 V', ({ size }) => {
    expect(drop(plainOf(truck(size)).plain).loadW).toBeGreaterThan(72)
  })

  it('at its rated voltage and without any wire it takes 72 W through 8.00 ohm', () => {
    const { load, ...rest } = truck('4 mm2')
    const bare = { ...rest, lengthM: new Given(0), back: { by: 'structure' as const }, jointsOhm: new Given(0) }
    const results = drop(plainOf({ ...bare, load: { ...load, busV: new Given(24) } }).plain)
    expect(results.loadW).toBeCloseTo(72, 9)
    expect(results.loadV! / results.currentA).toBeCloseTo(8, 9)
  })
})
