// example: two faults at once are hinted at where no single one explains the readings
import { expect, it } from 'vitest'
import { diagnosed } from '../../../src/trade/proof/diagnosis.ts'
import { withFirst } from '../../../src/trade/proof/fault.ts'
import { predictorOf } from '../../../src/trade/proof/predictor.ts'
import { twoFaults, UNEXPLAINED_RATIO } from '../../../src/trade/proof/two-faults.ts'
import { faultNamed, TWO_POINTS, twoFaultList, twoHeaters } from './invented.ts'

const predictor = predictorOf(twoHeaters(), TWO_POINTS)
const faults = twoFaultList()

it('both are named', () => {
  const both = withFirst(faultNamed('bad-ground@block to chassis'), 0.6, faultNamed('open@right'))
  const readings = predictor.valuesOf(both, 0)
  const diagnosis = diagnosed(predictor, faults, readings)
  expect(diagnosis.fitRatio).toBeLessThan(UNEXPLAINED_RATIO)
  const two = twoFaults(predictor, diagnosis, readings)
  expect(new Set(two?.faults.map(({ id }) => id))).toEqual(new Set(['bad-ground@block to chassis', 'open@right']))
  const size = two!.sizes[two!.faults.findIndex(({ kind }) => kind === 'bad-ground')]!
  expect(size).toBeGreaterThan(0.55)
  expect(size).toBeLessThan(0.65)
})

// One case in a thousand is where it begins.
it('two are asked about only where one explains less than one case in a thousand', () => {
  const [first, second] = [faultNamed('bad-ground@block to chassis'), faultNamed('open@right')]
  const readings = predictor.valuesOf(withFirst(first, 0.6, second), 0)
  const diagnosis = diagnosed(predictor, [first, second], readings)
  expect(twoFaults(predictor, { ...diagnosis, fitRatio: 0.001 }, readings)).toBeNull()
  expect(twoFaults(predictor, { ...diagnosis, fitRatio: 0.000999 }, readings)).not.toBeNull()
})

it('nothing where one fault explains them', () => {
  const readings = predictor.valuesOf(faultNamed('open@right'), 0)
  expect(twoFaults(predictor, diagnosed(predictor, faults, readings), readings)).toBeNull()
})

it('nothing where no two do', () => {
  const readings = TWO_POINTS.map((_, i) => 3 + ((i * 7) % 5))
  expect(twoFaults(predictor, diagnosed(predictor, faults, readings), readings)).toBeNull()
})
