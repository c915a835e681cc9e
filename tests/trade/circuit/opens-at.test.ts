// property: beyond so many times the rating a protector opens no quicker, and the formulas of its band stay inside their range
import { expect, it } from 'vitest'
import { opensAt } from '../../../src/trade/circuit/opens-at.ts'
import { openingTime } from '../../../src/trade/circuit/protection-opening.ts'
import { styleOf } from '../../../src/trade/circuit/protection-styles.ts'

const FUSE = { style: 'blade', ratingA: 5 } as const

it('is the band up to there, and no more beyond', () => {
  expect(opensAt(FUSE, 30)).toEqual(openingTime(styleOf('blade'), { currentA: 30, ratingA: 5 }))
  expect(opensAt(FUSE, 2000)).toEqual(openingTime(styleOf('blade'), { currentA: 2000, ratingA: 5 }))
  expect(opensAt(FUSE, 1e6)).toEqual(opensAt(FUSE, 2000))
  expect(opensAt(FUSE, 1990)!.longestS).toBeGreaterThan(opensAt(FUSE, 2000)!.longestS)
})
