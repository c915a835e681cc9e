// property: what a reading is expected to tell is never negative and never more than there is to tell; examples by hand
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { diagnosed, type RankedFault } from '../../../src/trade/proof/diagnosis.ts'
import type { Fault } from '../../../src/trade/proof/fault.ts'
import { fitFault } from '../../../src/trade/proof/fit-fault.ts'
import { probeGains } from '../../../src/trade/proof/next-probe.ts'
import { predictorOf } from '../../../src/trade/proof/predictor.ts'
import { amps, faultNamed, TWO_POINTS, twoFaultList, twoHeaters, volts } from './invented.ts'

const tested = twoHeaters()
const blind = predictorOf(tested, [])
const over = predictorOf(tested, TWO_POINTS)

function evenly(...faults: readonly Fault[]): readonly RankedFault[] {
  return faults.map(fault => ({
    fitted: fitFault(blind, fault, []),
    fault,
    priorRatio: 1 / faults.length,
    probabilityRatio: 1 / faults.length,
    size: null
  }))
}

describe('two faults as likely as each other', () => {
  const gains = probeGains(over, evenly(faultNamed('open@left'), faultNamed('open@right')), [])
  const at = (red: string, black: string, takes = 'volts') =>
    gains.find(({ point }) => point.red === red && point.black === black && point.takes === takes)!.gainBits

  it('one bit where they show nothing alike', () => {
    expect(at('tee', 'left+')).toBeCloseTo(1, 2)
    expect(at('left+', 'block', 'amps')).toBeCloseTo(1, 2)
    expect(gains[0]!.gainBits).toBeCloseTo(1, 2)
  })

  it('nothing where they show the same', () => {
    expect(at('bus', 'chassis')).toBeLessThan(0.01)
  })
})

it('of one fault alone there is nothing to tell', () => {
  for (const { gainBits } of probeGains(over, evenly(faultNamed('open@left')), [])) expect(gainBits).toBeLessThan(1e-9)
})

it('never negative, and never more than there is to tell', () => {
  const faults = twoFaultList()
  fc.assert(
    fc.property(fc.subarray([...faults], { minLength: 2, maxLength: 5 }), some => {
      for (const { gainBits } of probeGains(over, evenly(...some), [])) {
        expect(gainBits).toBeGreaterThanOrEqual(0)
        expect(gainBits).toBeLessThanOrEqual(Math.log2(some.length) + 1e-6)
      }
    }),
    { numRuns: 10 }
  )
})

it('after readings, the point between the faults that are left', () => {
  const taken = [volts('bus', 'chassis'), volts('left+', 'block'), volts('right+', 'block'), amps('bus', 'tee')]
  const fault = faultNamed('bad-ground@block to chassis')
  const readings = predictorOf(tested, taken).valuesOf(fault, 0.4)
  const { suspects } = diagnosed(predictorOf(tested, taken), twoFaultList(taken), readings)
  const asked = [volts('tee', 'left+'), volts('block', 'chassis'), volts('tee', 'right+')]
  const [best] = probeGains(
    predictorOf(tested, [...taken, ...asked]),
    suspects.flatMap(({ members }) => members),
    readings
  )
  expect([best!.point.red, best!.point.black]).toEqual(['block', 'chassis'])
})
