// example: faults that the readings taken would hardly show
import { expect, it } from 'vitest'
import { predictorOf } from '../../../src/trade/proof/predictor.ts'
import { unseenFaults } from '../../../src/trade/proof/unseen-faults.ts'
import { TWO_POINTS, twoFaultList, twoHeaters, volts } from './invented.ts'

it('the volts of the bus show next to nothing', () => {
  const points = [volts('bus', 'chassis')]
  const unseen = unseenFaults(predictorOf(twoHeaters(), points), twoFaultList(points)).map(({ id }) => id)
  expect(unseen).toContain('open@left')
  expect(unseen).toContain('bad-ground@block to chassis')
  expect(unseen).not.toContain('source-low@bus')
})

it('every point shows almost all', () => {
  const unseen = unseenFaults(predictorOf(twoHeaters(), TWO_POINTS), twoFaultList())
  expect(unseen.map(({ id }) => id)).toEqual([])
})
