// Table: a bottoming hand tap by the maker's formula and constants (read-secondary), worked out by hand.
import { expect, test } from 'vitest'
import { handTapTorqueNm } from '../../../src/trade/joint/tapping-torque.ts'
import { knownThread } from '../thread/known-thread.ts'

// tan 30°·kc·K·(D − Do)²·(D + 2·Do)/24000: 0.57735·1300·1.3·1²·16/24000 in the first row; K is 1.3 for a coarse pitch, 1.25 for a fine one.
test.each([
  ['M6', 'aluminium', 5, 0.650481],
  ['M6', 'iron', 5, 1.451072],
  ['M8x1', 'aluminium', 7, 0.860011],
  ['1/4-20 UNC', 'aluminium', 5.1, 1.051315],
  ['1/4-28 UNF', 'aluminium', 5.5, 0.490026]
] as const)('%s in %s, hole %f mm: %f N·m', (name, metal, holeMm, torqueNm) => {
  expect(handTapTorqueNm({ thread: knownThread(name), metal, holeMm })).toBeCloseTo(torqueNm, 5)
})

test.each(['zinc', 'magnesium'] as const)('no cutting force of %s is printed', metal => {
  expect(handTapTorqueNm({ thread: knownThread('M6'), metal, holeMm: 5 })).toBeNull()
})
