// property: where the stress area stands
import { expect, it } from 'vitest'
import { metricThreads } from '../../../src/trade/thread/thread-list.ts'
import { resultsOf } from './known-thread.ts'

it.each(metricThreads())('$name: between the areas of the root and of the pitch diameter', ({ name }) => {
  const { stressAreaMm2, root, pitchDiameter } = resultsOf(name)
  expect(stressAreaMm2).toBeGreaterThan((Math.PI / 4) * root.basicMm ** 2)
  expect(stressAreaMm2).toBeLessThan((Math.PI / 4) * pitchDiameter.basicMm ** 2)
})
