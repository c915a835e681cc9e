// table: a drill against the minor diameter of M12x1.5 in class 6H, 10.376 to 10.676 mm (ISO 965-1, read-secondary)
import { expect, it } from 'vitest'
import { drillOutsideLimits } from '../../../src/rules/hole/drill-outside-limits.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, expectDoubted, sharp, verdictOf } from '../bounded.ts'

const minor = { minMm: 10.376, maxMm: 10.676 }

it.each([
  [10.375, 'fail'],
  [10.376, 'caution'],
  [10.377, 'pass'],
  [10.5, 'pass'],
  [10.675, 'pass'],
  [10.676, 'caution'],
  [10.677, 'fail']
])('a drill of %f mm: %s', (mm, verdict) => {
  expect(verdictOf(drillOutsideLimits, { drillMm: sharp(mm), thread: 'M12x1.5', minor })).toBe(verdict)
})

it.each([
  [10.4, 10.376, 0.024],
  [10.65, 10.676, 0.026],
  [10.2, 10.376, -0.176],
  [10.8, 10.676, -0.124]
])('%f mm is held against the nearer limit', (mm, limit, margin) => {
  const finding = asked(drillOutsideLimits, { drillMm: sharp(mm), thread: 'M12x1.5', minor })
  expect(finding.limit).toBe(limit)
  expect(finding.margin).toBeCloseTo(margin, 12)
  expect(finding.says).toContain('minor diameter of M12x1.5 10.376 to 10.676 mm')
})

it('an assumed drill is a caution at best', () => {
  expectDoubted(drillOutsideLimits, { drillMm: assumed(sharp(10.5)), thread: 'M12x1.5', minor })
})
