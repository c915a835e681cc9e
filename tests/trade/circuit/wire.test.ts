// property: a wire under its load; the wire of the last test is invented
import { describe, expect, it } from 'vitest'
import { Given, type Plain, plainOf } from '../../../src/formula/given.ts'
import { drop } from '../../../src/trade/circuit/drop.ts'
import { type WireGiven, wire } from '../../../src/trade/circuit/wire.ts'
import { wire as conductor } from './invented.ts'

const GIVEN: WireGiven = {
  practice: 'boat',
  conductor: conductor('AWG 14', 'solid'),
  lengthM: new Given(5),
  busV: new Given(12.5),
  load: { takes: 'current', currentA: new Given(14), busV: new Given(12.5) },
  insulationC: new Given(105),
  ambientC: new Given(30),
  altitudeM: new Given(0),
  bundleCount: new Given(1),
  protector: { style: 'blade', ratingA: new Given(20) }
}
const at = (changed: Partial<Plain<WireGiven>>) => wire({ ...plainOf(GIVEN).plain, ...changed })
const load = (currentA: number) => ({ takes: 'current', currentA, busV: 12.5 }) as const

it('cold it drops what the quick sum of a drop gives', () => {
  const alone = drop({
    conductor: GIVEN.conductor,
    lengthM: 5,
    back: { by: 'wire', returnM: 5 },
    jointsOhm: 0,
    conductorC: 30,
    load: load(14)
  })
  expect(at({})).toMatchObject({ dropV: alone.dropV, dropPercent: alone.dropPercent, currentA: 14 })
})

describe('warmed by its current', () => {
  it('stands at its rating at its full current, at the surroundings without any', () => {
    expect(at({ load: load(35) }).loadedC).toBeCloseTo(105, 9) // 33 CFR 183.425 table 5 (read-secondary): AWG 14, 105 °C: 35 A
    expect(at({ load: load(0) }).loadedC).toBe(30)
  })

  it('a quarter of the rise at half the current, wherever it lies', () => {
    expect(at({ load: load(17.5) }).loadedC).toBeCloseTo(30 + 75 / 4, 9)
    expect(at({ load: load(17.5), ambientC: 5 }).loadedC).toBeCloseTo(5 + 75 / 4, 9)
  })

  it('drops more than cold', () => {
    const { dropV, warmDropV, loadedC } = at({})
    expect(warmDropV / dropV).toBeCloseTo((234.5 + loadedC) / (234.5 + 30), 9)
  })
})

describe('a short at the far end', () => {
  it('is reckoned in hot wire', () => {
    const hot = drop({
      conductor: GIVEN.conductor,
      lengthM: 5,
      back: { by: 'wire', returnM: 5 },
      jointsOhm: 0,
      conductorC: 105,
      load: load(1)
    })
    expect(at({}).short!.faultA * hot.loopOhm).toBeCloseTo(12.5, 9)
  })

  it('without protector, without figure or without length nothing is said', () => {
    expect(at({ protector: null }).short).toBeNull()
    expect(at({ lengthM: 0 }).short).toBeNull()
    expect(at({ conductor: conductor('AWG 28', 'solid'), load: load(1) })).toMatchObject({ short: null, ampacityA: null, spareA: null })
  })

  it('a larger fuse never leaves the wire cooler', () => {
    const ends = [5, 10, 20, 30, 40].map(ratingA => at({ protector: { style: 'blade', ratingA } }).short!.endC)
    expect(ends.toSorted((a, b) => a - b)).toEqual(ends)
  })
})
