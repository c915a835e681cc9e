// table: wall left beside the thread M12x1.5 against what it needs; the walls are invented
import { expect, it } from 'vitest'
import { wallThin } from '../../../src/rules/hole/wall-thin.ts'
import { asked } from '../../../src/rules/rule.ts'
import { wallNeeds as needsOf } from '../../../src/trade/hole/wall.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const wallNeeds = needsOf({ majorMm: 12, pitchMm: 1.5 })

it('what M12x1.5 needs, by hand', () => {
  // 5/8·H = 0.812 mm, ISO 724 (memory). 0.2·12 mm. Its insert is 12 + 1.5·1.29904 = 13.9486 mm wide (memory),
  // of which (13.9486 − 12)/2 + 0.2·13.9486 = 0.9743 + 2.7897 = 3.7640 mm of wall.
  expect(wallNeeds.heightMm).toBeCloseTo(0.812, 3)
  expect(wallNeeds.strengthMm).toBeCloseTo(2.4, 9)
  expect(wallNeeds.insertMm).toBeCloseTo(3.764, 3)
})

it.each([
  ['thinner than the thread is deep', between(0.05, 1), 'fail'],
  ['none at all', sharp(0), 'fail'],
  ['as thick as the thread is deep', sharp(0.82), 'caution'],
  ['too thin for anything to be said of the thread', sharp(2.39), 'caution'],
  ['too thin for an insert', between(3.75, 5), 'caution'],
  ['thick enough for an insert', between(3.77, 5), 'pass']
])('%s', (_, wallLeftMm, verdict) => {
  expect(verdictOf(wallThin, { wallLeftMm, wallNeeds })).toBe(verdict)
})

it('a wall never gets better by being thinner', () => {
  const rank = { pass: 0, caution: 1, fail: 2 } as const
  const ranks = Array.from(
    { length: 120 },
    (_, i) => rank[verdictOf(wallThin, { wallLeftMm: sharp(6 - i / 20), wallNeeds }) as keyof typeof rank]
  )
  expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
})

it('says the figure, and where it comes from', () => {
  expect(asked(wallThin, { wallLeftMm: sharp(0.05), wallNeeds })).toMatchObject({ value: 0.05, source: 'practice' })
  expect(asked(wallThin, { wallLeftMm: sharp(0.05), wallNeeds }).says).toMatch(/0\.81 mm wanted .*our own limit.*3\.76 mm/)
  expect(asked(wallThin, { wallLeftMm: sharp(2), wallNeeds })).toMatchObject({ source: 'alexander', limit: wallNeeds.insertMm })
  expect(asked(wallThin, { wallLeftMm: sharp(2), wallNeeds }).says).toMatch(/2\.40 mm, 1\.4 diameters/)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(wallThin, { wallLeftMm: assumed(between(5, 6)), wallNeeds })
})

it('without the wall is not judged', () => {
  expectNotJudged(wallThin, { wallLeftMm: null, wallNeeds }, 'casting.wall', 'calliper')
})
