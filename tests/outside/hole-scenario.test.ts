// table: a blind hole worked by hand. Status: invented data, hand arithmetic, checked with a separate script.
// Sums of the given figures are exact; the rest is held to the digits the page shows.
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../src/formula/bounds.ts'
import { hole } from '../../src/trade/hole/hole.ts'
import { stopSetting } from '../../src/trade/hole/stop.ts'
import { elbow } from '../trade/hole/invented.ts'

describe('coolant-elbow heater, M12×1.75 in a cored hole of 9.0 mm', () => {
  const { opening, rest } = elbow()
  const stop = stopSetting(opening)
  const results = boundsOf({ ...opening, ...rest, tipDepthMm: stop.tipDepthMm }, hole)
  const tap = (name: string) => results.taps.find(each => each.name === name)!

  it('sets the stop to 24.0 − 0.5 − 1.0 − 0.3 = 22.2 mm, exactly', () => {
    expect(stop.tipDepthMm.value).toBeCloseTo(22.2, 9)
    expect(stop.tipDepthMm.low).toBe(stop.tipDepthMm.high)
    expect(stop.first).toBe('point')
  })

  it('loses 5.1 × cot 59° = 3.064 mm to the point, so full diameter goes to 19.136 mm', () => {
    expect(Math.abs(results.pointLengthMm.value - 3.064)).toBeLessThanOrEqual(0.0005)
    expect(Math.abs(results.fullDiameterDepthMm.value - 19.136)).toBeLessThanOrEqual(0.0005)
    expect(results.fullDiameterDepthMm.high - results.fullDiameterDepthMm.low).toBeCloseTo(0.6, 9)
  })

  it('leaves 24 + 6 − 22.2 = 7.8 mm of metal, at worst (23.5 + 5.4) − 22.5 = 6.4 mm', () => {
    expect(results.oldTipMm.value).toBe(24)
    expect(results.metalLeftMm!.value).toBeCloseTo(7.8, 9)
    expect(results.metalLeftMm!.low).toBeCloseTo(6.4, 9)
  })

  it.each([
    { name: 'taper', depthMm: 4.54 },
    { name: 'second', depthMm: 11.54 },
    { name: 'bottoming', depthMm: 15.91 }
  ])('$name leaves $depthMm mm of full thread', ({ name, depthMm }) => {
    expect(Math.abs(tap(name).threadDepthMm.value - depthMm)).toBeLessThanOrEqual(0.005)
  })

  it('the second tap passes 11.0 mm by 0.54, by 0.24 at the worst end of the stop error', () => {
    expect(Math.abs(tap('second').needMarginMm!.value - 0.54)).toBeLessThanOrEqual(0.005)
    expect(Math.abs(tap('second').needMarginMm!.low - 0.24)).toBeLessThanOrEqual(0.005)
  })

  it('the best tap is the bottoming one', () => {
    expect(results.best!.name).toBe('bottoming')
    expect(results.best!.threadDepthMm.value).toBe(tap('bottoming').threadDepthMm.value)
  })

  it('each tap travels 18.54/1.75 = 10.6 turns', () => {
    for (const { tapTurns } of results.taps) expect(Math.abs(tapTurns.value - 10.6)).toBeLessThanOrEqual(0.05)
  })
})
