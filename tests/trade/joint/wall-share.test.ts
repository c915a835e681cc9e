// table: what a thin wall leaves of a thread; Alexander's factor by hand (memory)
import { expect, it } from 'vitest'
import { wallBeside } from '../../../src/trade/joint/wall-share.ts'

it.each([
  // 12 + 2·2.4 = 1.4·12: 3.8·1.4 − 1.4² − 2.61 = 0.75. 12 + 2·5.4 = 1.9·12: all of it. Between: 12 + 2·3.6 = 1.6·12: 3.8·1.6 − 1.6² − 2.61 = 0.91.
  [2.4, 0.75],
  [3.6, 0.91],
  [5.4, 1],
  [20, 1],
  [2.39, null],
  [0.05, null],
  [-1, null],
  [null, null]
])('%s mm beside M12', (leftMm, share) => {
  const { shareFactor } = wallBeside({ leftMm, majorMm: 12 })
  if (share === null) expect(shareFactor).toBeNull()
  else expect(shareFactor).toBeCloseTo(share, 9)
})

// 3.8·1.4 − 1.4² − 2.61 = 0.75, whatever is lost in rounding.
it('the least wall has a factor for every size of thread', () => {
  for (let tenths = 10; tenths <= 600; tenths++) {
    const { leastMm } = wallBeside({ leftMm: null, majorMm: tenths / 10 })
    expect(leastMm).toBeCloseTo(tenths / 50, 9)
    expect(wallBeside({ leftMm: leastMm, majorMm: tenths / 10 }).shareFactor, `M${tenths / 10}`).toBeCloseTo(0.75, 9)
  }
})
