// table: a sensor block warmed to 3 K above dew, and mass and centre, as a job. Status: invented data, hand arithmetic, checked with a separate script.
// Tolerances are the digits that the hand arithmetic shows.
import { describe, expect, it } from 'vitest'
import { judged } from '../work/job/heat-job.ts'

const { result, finding, errors } = judged(`
surroundings: { air: 4 °C, humidity: 78 %, altitude: 0 m, metal: -6 °C }
warm:
  mass: 0.45 kg
  material: aluminium
  area: 0.030 m2
  film: 20 W/m2K
  target: 3 K above dew
  within: 4 min
  cooling: { fall: 0 K }
mass:
  before: { mass: 742.0 kg, arm: 0.913 m }
  adds: [{ what: sensor block, mass: 0.31 kg, arm: -0.42 m }]
  limits: 0.90..0.95 m
`)
const value = (id: string) => Number(result(id)?.value)

describe('warm', () => {
  it('dew point 0.51 °C, so the target is 3.51 °C', () => {
    expect(errors).toEqual([])
    expect(Math.abs(value('surroundings:dew.dew-point') - 0.51)).toBeLessThanOrEqual(0.005)
    expect(Math.abs(value('warm:warm.target') - 3.51)).toBeLessThanOrEqual(0.005)
    expect(Math.abs(value('surroundings:dew.surface-margin') + 6.5)).toBeLessThanOrEqual(0.05)
  })
  it('34 °C, 675 s and 183 s', () => {
    expect(value('warm:warm.steady')).toBeCloseTo(34, 9)
    expect(value('warm:warm.time-constant')).toBeCloseTo(675, 9)
    expect(Math.abs(value('warm:warm.time-to-target') - 183)).toBeLessThanOrEqual(0.5)
    expect(finding('warm/too-slow')?.margin).toBeCloseTo(240 - value('warm:warm.time-to-target'), 9)
  })
})

it('mass 742.31 kg at 0.91244 m', () => {
  expect(value('mass:mass.mass')).toBeCloseTo(742.31, 9)
  expect(Math.abs(value('mass:mass.centre') - 0.91244)).toBeLessThanOrEqual(0.000005)
  expect(finding('mass/outside-limits')?.verdict).toBe('pass')
})
