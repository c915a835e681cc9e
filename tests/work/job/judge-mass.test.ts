// example: mass and centre of a job, with parts of the file, loads and limits; all figures are invented
import { describe, expect, it } from 'vitest'
import { judged } from './heat-job.ts'

const mass = (more: string) => judged(`mass: { before: { mass: 700 kg, arm: 1 m }, ${more} }\n`)

it('takes the mass of a part of the file', () => {
  const { result, finding } = mass('adds: [{ what: heater, part: cartridge, arm: -0.5 m }]')
  expect(result('mass:mass.mass')?.value).toBeCloseTo(700.041, 9)
  expect(result('mass:mass.centre')?.value).toBeCloseTo((700 - 0.0205) / 700.041, 12)
  expect(finding('mass/change')?.verdict).toBe('pass')
})

it('a part that goes into two holes and is counted once is no pass', () => {
  const second = (adds: string) =>
    judged(`mass: { before: { mass: 700 kg, arm: 1 m }, limits: 0.9..1.1 m, adds: [${adds}] }\n`, text =>
      text.replace(/^ {2}left: /m, '  other: { takes: cartridge, found: { diameter: 9.8 mm, depth: 19 mm } }\n  left: ')
    ).finding('mass/outside-limits')
  const one = '{ what: heater, part: cartridge, arm: 1 m }'
  expect(second(one)).toMatchObject({
    verdict: 'caution',
    says: expect.stringContaining('cartridge goes into 2 holes and is counted once in mass.adds')
  })
  expect(second(`${one}, ${one}`)?.verdict).toBe('pass')
})

it('what is put on and what is taken off both count as change', () => {
  const { finding } = mass('adds: [{ what: new, mass: 0.3 kg, arm: 1 m }, { what: old, mass: -0.3 kg, arm: 1 m }]')
  expect(finding('mass/change')).toMatchObject({ verdict: 'caution', value: expect.closeTo(0.6, 9) })
})

describe('limits', () => {
  it.each([
    ['0.9..1.1 m', 'pass'],
    ['1.001..1.1 m', 'fail'],
    ['0.9..0.999 m', 'fail']
  ])('%s', (limits, verdict) => {
    expect(mass(`limits: ${limits}`).finding('mass/outside-limits')?.verdict).toBe(verdict)
  })
  it('not given are asked for', () => {
    expect(mass('adds: []').finding('mass/outside-limits')).toMatchObject({ verdict: 'not-judged', change: 'give mass.limits' })
  })
})

describe('loads', () => {
  const LOADS =
    'loads: [{ what: fuel, least: 0 kg, greatest: 100 kg, arm: 2 m }, { what: crew, least: 70 kg, greatest: 160 kg, arm: 0.4 m }]'
  it('are put where they try each limit hardest', () => {
    const { result } = mass(`${LOADS}, limits: 0.8..1.2 m`)
    // Forward: crew of 160 kg, no fuel; rearward: crew of 70 kg, all fuel.
    expect(result('mass:mass.centre.forward')?.value).toBeCloseTo((700 + 160 * 0.4) / 860, 12)
    expect(result('mass:mass.centre.rearward')?.value).toBeCloseTo((700 + 70 * 0.4 + 200) / 870, 12)
    expect(result('mass:mass.centre.forward')?.source).toBe('adverse-loading')
  })
  it('fail where the machine without them would pass', () => {
    expect(mass(`${LOADS}, limits: 0.9..1.2 m`).finding('mass/outside-limits')).toMatchObject({
      verdict: 'fail',
      says: expect.stringContaining('as far forward as can be')
    })
    expect(mass('limits: 0.9..1.2 m').finding('mass/outside-limits')?.verdict).toBe('pass')
  })
})
