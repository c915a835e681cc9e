// example: minor limits of class 2B from ASME B1.1 (memory): 9/16-18 0.502 to 0.515 in, 5/8-18 0.565 to 0.578 in
import { expect, it } from 'vitest'
import { publishedTapDrill } from '../../../src/trade/thread/published-tap-drill.ts'
import { takenDrill } from '../../../src/trade/thread/taken-drill.ts'
import { metricThreads } from '../../../src/trade/thread/thread-list.ts'
import { minorLimits } from '../../../src/trade/thread/thread-results.ts'
import { knownThread } from './known-thread.ts'

it('is the published one where its hole is inside the limits', () => {
  expect(takenDrill(knownThread('M12x1.5'))).toMatchObject({ diameterMm: 10.5, why: 'the published tap drill' })
})

it.each([
  // 33/64 = 0.5156 in is above 0.515 in; 0.515 in is 13.081 mm, of drills by tenths 13.0.
  ['9/16-18', '13 mm', '33/64'],
  // 37/64 = 0.578125 in is above 0.578 in = 14.681 mm; of drills by halves there 14.5.
  ['5/8-18', '14.5 mm', '37/64']
])('of %s is %s: the published %s lies above the limits', (name, taken, published) => {
  const { drill, why } = takenDrill(knownThread(name))
  expect(drill?.name).toBe(taken)
  expect(why).toBe(`the largest drill inside the limits: the published ${published} lies above them`)
})

it('lies inside the limits of every thread, or is the published one where no drill does', () => {
  for (const thread of metricThreads()) {
    const { diameterMm } = takenDrill(thread)
    const { minMm, maxMm } = minorLimits(thread)
    const inside = diameterMm >= minMm && diameterMm <= maxMm
    expect(inside || diameterMm === publishedTapDrill(thread).diameterMm).toBe(true)
  }
})
