// table: invented threads, worked by hand: which are taken for one of 10 mm with a pitch of 1.5
import { expect, it } from 'vitest'
import { confusable } from '../../../src/trade/thread/identify-confusable.ts'
import { invented } from './invented-candidate.ts'

const named = (name: string, majorMm: number, pitchMm: number) => invented(name, [majorMm, pitchMm], [majorMm - 0.3, majorMm - 0.1])

// Apart in diameter as a share of 7 % of the larger, in pitch of 25 % of the larger; the sum is how far they are apart.
const THREAD = named('thread', 10, 1.5)
const OTHERS = [
  named('1.9 pitch', 10, 1.9), // 0 + 0.842
  named('10.72', 10.72, 1.5), // 0.959 + 0
  named('9.6, 1.4', 9.6, 1.4), // 0.571 + 0.267
  named('1.25 pitch', 10, 1.25), // 0 + 0.667
  named('10.2', 10.2, 1.5), // 0.280 + 0
  named('9.2', 9.2, 1.5), // 1.143: another size
  named('1.1 pitch', 10, 1.1), // 1.067: another pitch
  named('2.1 pitch', 10, 2.1) // 1.143
]

it('the near ones, nearest first, and never itself', () => {
  const found = confusable({ thread: THREAD, candidates: [...OTHERS, THREAD], side: 'external' })
  expect(found.map(({ second }) => second)).toEqual(['10.2', '1.25 pitch', '9.6, 1.4', '1.9 pitch', '10.72'])
  expect(new Set(found.map(({ first }) => first))).toEqual(new Set(['thread']))
})
