// Example: which caution goes with what.
import { describe, expect, it } from 'vitest'
import * as cautions from '../../../src/trade/heat/cautions.ts'
import { dewCautions, warmCautions } from '../../../src/trade/heat/warm-cautions.ts'

const plain = { filmBy: 'value', biotRatio: null, buoyancyRatio: null, startMarginK: null } as const

describe('a warm-up', () => {
  it('always says that it is no icing protection, and what is left out', () => {
    expect(warmCautions(plain)).toEqual([cautions.ICING, cautions.NO_RADIATION, cautions.MAKER])
  })
  it.each([
    ['a correlation', { filmBy: 'hilpert' }, cautions.CORRELATION_SPREAD],
    ['a thick block', { biotRatio: 0.1 }, cautions.ONE_TEMPERATURE],
    ['slow air', { filmBy: 'flat-plate', buoyancyRatio: 0.11 }, cautions.SLOW_AIR],
    ['wet metal', { startMarginK: 0 }, cautions.FILM_OF_WATER]
  ] as const)('%s', (_, change, caution) => {
    expect(warmCautions({ ...plain, ...change })).toContain(caution)
  })
  it.each([
    [{ biotRatio: 0.099 }, cautions.ONE_TEMPERATURE],
    [{ filmBy: 'mixed-plate', buoyancyRatio: 5 }, cautions.SLOW_AIR],
    [{ startMarginK: 0.1 }, cautions.FILM_OF_WATER]
  ] as const)('but not for %j', (change, caution) => {
    expect(warmCautions({ ...plain, ...change })).not.toContain(caution)
  })
})

describe('moist air', () => {
  it('a surface: its margin is an estimate, cooling is not in it, and it is no icing protection', () => {
    const said = dewCautions({ moisture: { by: 'humidity', humidityPercent: 80 }, surfaceC: 3 })
    expect(said).toEqual([cautions.MARGIN_IS_AN_ESTIMATE, cautions.COOLING_NOT_ENTERED, cautions.ICING])
  })
  it('an iced bulb is said', () => {
    expect(dewCautions({ moisture: { by: 'wet-bulb', wetBulbC: 0 }, surfaceC: null })).toEqual([cautions.BULB_BELOW_FREEZING])
    expect(dewCautions({ moisture: { by: 'wet-bulb', wetBulbC: 0.1 }, surfaceC: null })).toEqual([])
  })
})
