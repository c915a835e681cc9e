// Property: a nut factor and the friction split out of it say the same.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import * as arm from '../../../src/trade/joint/torque-arm.ts'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

test('thread and bearing with the shared friction make up the whole arm', () => {
  fc.assert(
    fc.property(number(0.06, 0.6), number(3, 36), number(0.08, 0.16), number(1.1, 2), (nutFactor, majorMm, pitchRatio, bearingRatio) => {
      const [pitchMm, bearingDiameterMm] = [Math.max(0.2, pitchRatio * majorMm), bearingRatio * majorMm]
      const pitchDiameterMm = majorMm - 0.65 * pitchMm
      const frictionFactor = arm.frictionFactor({ nutFactor, majorMm, pitchMm, pitchDiameterMm, bearingDiameterMm })
      const threadArmMm = arm.threadArmMm({ pitchMm, pitchDiameterMm, threadFrictionFactor: frictionFactor })
      const longArmMm = arm.longArmMm({ threadArmMm, bearingDiameterMm, bearingFrictionFactor: frictionFactor })
      expect(longArmMm / arm.nutFactorArmMm({ nutFactor, majorMm })).toBeCloseTo(1, 9)
    })
  )
})
