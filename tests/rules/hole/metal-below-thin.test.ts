// table: floor left below the drill against the wall beside the thread, or against a limit of the job; the numbers are invented
import { describe, expect, it } from 'vitest'
import { metalBelowThin } from '../../../src/rules/hole/metal-below-thin.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const wallLeftMm = sharp(4)
/** Where the drill stops short of the old bottom, what lies below that counts; here it goes past it. */
const metalBelowMm = sharp(50)
/** Below any wall but the thin ones. */
const wallNeeds = { heightMm: 0.9, insertMm: 2.5 }
/** Wider than any wall here but the thick ones. */
const majorMm = 12

describe('against the wall', () => {
  it.each([
    ['a thicker floor', between(4.01, 5), 'pass'],
    ['a thinner floor at the worst end', between(3.99, 5), 'caution'],
    ['a floor as thick as a wall must be', between(2.5, 5), 'caution'],
    ['one thinner than that', between(2.49, 5), 'fail'],
    ['a floor just as thick', between(4, 5), 'caution']
  ])('%s', (_, metalLeftMm, verdict) => {
    expect(verdictOf(metalBelowThin, { metalBelowMm, metalLeftMm, wallLeftMm, wallNeeds, majorMm, leastFloor: null })).toBe(verdict)
  })

  it('says what the limit is', () => {
    const finding = asked(metalBelowThin, { metalBelowMm, metalLeftMm: between(3, 5), wallLeftMm, wallNeeds, majorMm, leastFloor: null })
    expect(finding).toMatchObject({ limit: 4, margin: -1, value: 3 })
    expect(finding.says).toContain('the wall left beside the thread')
  })

  it('a wall that is broken itself does not make a drilled floor good', () => {
    expect(
      verdictOf(metalBelowThin, { metalBelowMm, metalLeftMm: sharp(-0.5), wallLeftMm: sharp(-1), wallNeeds, majorMm, leastFloor: null })
    ).toBe('fail')
  })
})

describe('against a least floor of the job', () => {
  const leastFloor = { value: 3, reason: "maker's letter" }

  it.each([
    ['more', between(3.01, 5), 'pass'],
    ['less at the worst end', between(2.99, 5), 'fail'],
    ['just that', between(3, 5), 'caution']
  ])('%s', (_, metalLeftMm, verdict) => {
    expect(verdictOf(metalBelowThin, { metalBelowMm, metalLeftMm, wallLeftMm, wallNeeds, majorMm, leastFloor })).toBe(verdict)
  })

  it('goes before the wall, and its reason is said', () => {
    const finding = asked(metalBelowThin, { metalBelowMm, metalLeftMm: sharp(3.5), wallLeftMm: null, wallNeeds, majorMm, leastFloor })
    expect(finding.verdict).toBe('pass')
    expect(finding.says).toContain("maker's letter")
  })

  it('below nought does not make a drilled floor good', () => {
    expect(
      verdictOf(metalBelowThin, { metalBelowMm, metalLeftMm: sharp(-0.5), wallLeftMm, wallNeeds, majorMm, leastFloor: { value: -1 } })
    ).toBe('fail')
  })
})

describe('a drill that stops short of the old bottom', () => {
  it.each([
    ['a thin floor of the casting itself', between(3.9, 4.3), 'caution', 3.9],
    ['one thinner than any wall may be', between(2.4, 4.3), 'fail', 2.4],
    ['a thick one', between(4.1, 4.3), 'pass', 4.1],
    ['one thicker than what the drill leaves', between(6, 7), 'pass', 5]
  ])('%s', (_, below, verdict, value) => {
    const subject = { metalBelowMm: below, metalLeftMm: between(5, 6), wallLeftMm, wallNeeds, majorMm, leastFloor: null }
    expect(asked(metalBelowThin, subject)).toMatchObject({ verdict, value })
  })
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(metalBelowThin, { metalBelowMm, metalLeftMm: assumed(between(6, 7)), wallLeftMm, wallNeeds, majorMm, leastFloor: null })
})

it('without the metal below is not judged', () => {
  expectNotJudged(
    metalBelowThin,
    { metalBelowMm: null, metalLeftMm: null, wallLeftMm, wallNeeds, majorMm, leastFloor: null },
    'casting.metal-below',
    'ultrasonic gauge'
  )
})

it('without wall or limit a floor that could be thick enough is not judged', () => {
  expectNotJudged(
    metalBelowThin,
    { metalBelowMm, metalLeftMm: between(2.5, 3), wallLeftMm: null, wallNeeds, majorMm, leastFloor: null },
    'casting.wall',
    'calliper'
  )
})

it.each([
  ['thinner than any wall may be', between(2.4, 3), sharp(50), 2.4],
  ['thinner below the old bottom', between(6, 7), sharp(0.2), 0.2],
  ['of nothing at all', sharp(0.5), sharp(0), 0]
])('without the wall a floor %s fails', (_, metalLeftMm, below, value) => {
  const subject = { metalBelowMm: below, metalLeftMm, wallLeftMm: null, wallNeeds, majorMm, leastFloor: null }
  const finding = asked(metalBelowThin, subject)
  expect(finding).toMatchObject({ verdict: 'fail', value, limit: 2.5 })
  expect(finding.says).toContain('which is not given')
})

it.each([
  [0, 'caution'],
  [0.8, 'caution'],
  [1, 'pass']
])('a limit of the job of %s mm, where the thread is 0.9 mm deep: %s', (value, verdict) => {
  const subject = { metalBelowMm, metalLeftMm: sharp(2), wallLeftMm, wallNeeds, majorMm, leastFloor: { value, reason: 'a letter' } }
  expect(verdictOf(metalBelowThin, subject)).toBe(verdict)
})

it('drilled through fails even without wall or limit', () => {
  expect(
    asked(metalBelowThin, { metalBelowMm, metalLeftMm: between(-0.1, 2), wallLeftMm: null, wallNeeds, majorMm, leastFloor: null })
  ).toMatchObject({
    verdict: 'fail',
    limit: 2.5,
    margin: -2.6
  })
})

it('a wall of uncertain thickness is held against the floor at its thickest', () => {
  const subject = { metalBelowMm, leastFloor: null, wallNeeds, majorMm, wallLeftMm: between(3, 5) }
  expect(verdictOf(metalBelowThin, { ...subject, metalLeftMm: between(5.01, 6) })).toBe('pass')
  expect(asked(metalBelowThin, { ...subject, metalLeftMm: between(4.9, 6) })).toMatchObject({ verdict: 'caution', limit: 5 })
})

it('a wall that hangs on an assumed value is a caution at best', () => {
  expectDoubted(metalBelowThin, {
    metalBelowMm,
    metalLeftMm: sharp(9),
    wallLeftMm: assumed(between(3, 4)),
    wallNeeds,
    majorMm,
    leastFloor: null
  })
})

it('an old hole that may be open behind fails, with the measure that says so', () => {
  const open = {
    metalBelowMm: between(-0.2, 1),
    metalLeftMm: between(3, 4),
    wallLeftMm: sharp(1),
    wallNeeds,
    majorMm,
    leastFloor: { value: 1 }
  }
  expect(asked(metalBelowThin, open)).toMatchObject({ verdict: 'fail', value: -0.2, limit: 0, margin: -0.2 })
})

it('a wall that is thin itself never lowers the limit', () => {
  // Floors of 2.4 mm fail beside a wall of 2.5 mm; so they must beside every thinner one.
  const subject = { metalBelowMm, leastFloor: null, wallNeeds, majorMm, metalLeftMm: sharp(2.4) }
  for (const wall of [2.5, 2, 1, 0.3, 0.05, 0, -1])
    expect(asked(metalBelowThin, { ...subject, wallLeftMm: sharp(wall) })).toMatchObject({ verdict: 'fail', limit: 2.5 })
  expect(asked(metalBelowThin, { ...subject, wallLeftMm: sharp(0.3) }).says).toContain('too thin to be the measure')
})

describe('beside a wall thicker than the thread is wide', () => {
  const subject = { metalBelowMm, wallNeeds, majorMm, leastFloor: null }

  it.each([
    ['as wide', sharp(12), 'caution', 12],
    ['thinner', sharp(11.9), 'caution', 12],
    ['thicker', sharp(12.1), 'pass', 12],
    ['below any wall', sharp(2.4), 'fail', 2.5]
  ])('a floor %s: %s', (_, metalLeftMm, verdict, limit) => {
    for (const wall of [sharp(12.1), sharp(25), between(5, 400), assumed(sharp(30))])
      expect(asked(metalBelowThin, { ...subject, metalLeftMm, wallLeftMm: wall })).toMatchObject({ verdict, limit })
  })

  it('and without a word of the wall, a floor that thick has all that any wall could ask', () => {
    expect(asked(metalBelowThin, { ...subject, metalLeftMm: sharp(12.1), wallLeftMm: null })).toMatchObject({ verdict: 'pass', limit: 12 })
    expect(verdictOf(metalBelowThin, { ...subject, metalLeftMm: sharp(11.9), wallLeftMm: null })).toBe('not-judged')
  })

  it('says that more is asked of no floor, and whence', () => {
    const { says } = asked(metalBelowThin, { ...subject, metalLeftMm: sharp(8), wallLeftMm: sharp(25) })
    expect(says).toContain('at least 12.00 mm wanted (as thick as the thread is wide: more is asked of no floor')
    expect(says).toContain('common practice, no published source')
  })
})

it.each([
  ['below the old bottom', sharp(3), between(5, 6)],
  ['below the drill', sharp(50), sharp(3)]
])('a floor that is thin %s is told a least floor of one’s own as a way out', (_, below, metalLeftMm) => {
  const { verdict, change } = asked(metalBelowThin, {
    metalBelowMm: below,
    metalLeftMm,
    wallLeftMm,
    wallNeeds,
    majorMm,
    leastFloor: null
  })
  expect(verdict).toBe('caution')
  expect(change).toContain('limits.metal-below')
})
