// table: moist air, warm-up and mass of a sensor block worked by hand. Status: invented data, hand arithmetic, checked with a separate script.
// Tolerances are the digits that the hand arithmetic shows.
import { describe, expect, it } from 'vitest'
import { jsonOf } from '../commands/json-of.ts'

describe('metal at -6 °C in air of 4 °C and 78 %', async () => {
  const { exit, results, findings } = await jsonOf('dew --air "4 °C" --humidity "78 %" --surface "-6 °C"')
  const value = (id: string) => results[id]!.value!

  it('vapour pressure 6.341 hPa, dew point 0.51 °C', () => {
    expect(Math.abs(value('vapour-pressure') - 634.1)).toBeLessThanOrEqual(0.05)
    expect(Math.abs(value('dew-point') - 0.51)).toBeLessThanOrEqual(0.005)
    expect(results['frost-point']!.value).toBeNull()
  })

  it('6.5 K below it, so wet or frosted now', () => {
    expect(Math.abs(value('surface-margin') + 6.5)).toBeLessThanOrEqual(0.05)
    expect(exit).toBe(1)
    expect(findings[0]).toMatchObject({ rule: 'dew/surface-wet', verdict: 'fail' })
  })
})

describe('18 W into 0.45 kg of aluminium, 20 W/m²K on 0.030 m²', async () => {
  const { exit, results } = await jsonOf(
    'warm --power "18 W" --mass "0.45 kg" --material aluminium --area "0.030 m2" --film "20 W/m2K" --air "4 °C" --start "-6 °C" --target "3.51 °C"'
  )
  it('settles at 34 °C with a time constant of 675 s', () => {
    expect(results['steady']!.value).toBeCloseTo(34, 9)
    expect(results['time-constant']!.value).toBeCloseTo(675, 9)
    expect(results['film']!.value).toBe(20)
  })
  it('is 3 K above dew after 183 s', () => {
    expect(Math.abs(results['time-to-target']!.value! - 183)).toBeLessThanOrEqual(0.5)
    expect(exit).toBe(0)
  })
})

describe('0.31 kg at -0.42 m into 742.0 kg at 0.913 m', async () => {
  const { results } = await jsonOf('mass --before "742.0 kg @ 0.913 m" --add "0.31 kg @ -0.42 m"')
  it('742.31 kg at 0.91244 m, 0.56 mm forward', () => {
    expect(results['mass']!.value).toBeCloseTo(742.31, 9)
    expect(Math.abs(results['centre']!.value! - 0.91244)).toBeLessThanOrEqual(0.000005)
    expect(Math.abs(results['change']!.value! + 0.00056)).toBeLessThanOrEqual(0.000005)
  })
})
