// table: what does not fit together in the parts of a job on heat and mass, with its place
import { describe, expect, it } from 'vitest'
import { judged } from '../work/job/heat-job.ts'

const COLD = 'surroundings: { air: -5 °C }\n'
const reading = '{ at: 1 min, metal: 5 °C }'
const test = (count: number) =>
  `heat-test: { power: 9 W, air: 5 °C, air-was: still, accuracy: 1 K, readings: [${Array(count).fill(reading).join(', ')}] }`

describe('a fault between fields', () => {
  it.each([
    ['surroundings: { air: 4 °C, humidity: 78 %, wet-bulb: 2 °C }', 'surroundings.wet-bulb', 'a wet bulb beside the humidity'],
    ['surroundings: { air: -5 °C ± 3 K, wet-bulb: -4 °C }', 'surroundings.wet-bulb', 'a wet bulb that is warmer than its air'],
    [`${COLD}warm: { heaters: [right] }`, 'warm.heaters.0', '"right", which is no hole of this file'],
    [`${COLD}warm: { cooling: {} }`, 'warm.cooling', 'cooling of nothing'],
    [`${COLD}warm: { cooling: { fall: 3 K, throat: 20 m/s } }`, 'warm.cooling', 'a fall beside what makes it'],
    [`${COLD}warm: { ${test(0)} }`, 'warm.heat-test.readings', 'no readings'],
    [`${COLD}warm: { ${test(1)} }`, 'warm.heat-test.readings', 'one reading'],
    [`${COLD}warm: { ${test(4)} }`, 'warm.heat-test.readings', '4 readings'],
    [`${COLD}warm: { target: 3 K }`, 'warm.target', 'K'],
    [`${COLD}warm: { material: aluminum-foil }`, 'warm.material', '"aluminum-foil"'],
    [`${COLD}warm: { emissivity: shiny }`, 'warm.emissivity', '"shiny"'],
    ['mass: { before: { mass: 7 kg, arm: 1 m }, adds: [{ what: x, arm: 1 m }] }', 'mass.adds.0', 'a change without a mass'],
    ['mass: { before: { mass: 7 kg, arm: 1 m }, adds: [{ what: x, part: cartrige, arm: 1 m }] }', 'mass.adds.0.part', '"cartrige"'],
    [
      'mass: { before: { mass: 7 kg, arm: 1 m }, adds: [{ what: x, part: cartridge, mass: 1 g, arm: 1 m }] }',
      'mass.adds.0.mass',
      'a mass beside the part'
    ],
    ['mass: { before: { mass: 7 kg }, adds: [] }', 'mass.before.arm', 'no arm']
  ])('%s', (text, path, found) => {
    const [error, ...others] = judged(`${text}\n`).errors
    expect(others).toEqual([])
    expect(error?.where).toMatchObject({ file: 'x.yaml', path, line: expect.any(Number) })
    expect(error?.found).toContain(found)
  })

  it('the nearest name is told', () => {
    const [error] = judged('mass: { before: { mass: 7 kg, arm: 1 m }, adds: [{ what: x, part: cartrige, arm: 1 m }] }\n').errors
    expect(error?.near).toBe('cartridge')
  })
})

it('a number outside the range of a formula stands at the field it came from', () => {
  const [error] = judged('surroundings: { air: -50 °C, humidity: 80 %, metal: -50 °C }\n').errors
  expect(error?.where.path).toBe('surroundings.air')
})
