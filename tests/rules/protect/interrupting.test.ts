// table: short against breaking capacity; the numbers are invented
import { expect, it } from 'vitest'
import { interrupting } from '../../../src/rules/protect/interrupting.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const subject = {
  protector: 'fuse',
  where: 'right behind it',
  faultA: between(500, 900),
  breakingA: 1000,
  breakingSays: 'at 32 V',
  breakingV: { sureV: 32, mostV: 58 },
  busV: between(24, 28)
} as const

it.each([
  ['less at the worst end', between(500, 999), 'pass'],
  ['more at the worst end', between(500, 1001), 'fail'],
  ['just that', between(500, 1000), 'caution']
])('%s', (_, faultA, verdict) => {
  expect(verdictOf(interrupting, { ...subject, faultA })).toBe(verdict)
})

it('says where the short is', () => {
  const breaks = 'it can break 1000.00 A (at 32 V)'
  expect(asked(interrupting, subject).says).toBe(`fuse: a short right behind it is 900.00 A, a plain conductor in its place, ${breaks}`)
  expect(asked(interrupting, { ...subject, where: 'at the far end' }).says).toBe(`fuse: a short at the far end is 900.00 A, ${breaks}`)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(interrupting, { ...subject, faultA: assumed(between(500, 900)) })
})

it('without a short a bus above what every such part can break is told all the same', () => {
  const at = (busV: ReturnType<typeof between> | null) => asked(interrupting, { ...subject, faultA: null, busV })
  expect(at(between(40, 48))).toMatchObject({ verdict: 'not-judged', says: expect.stringContaining('the bus may have 48.00 V') })
  expect(at(between(24, 28)).says).not.toContain('58')
  expect(at(null).says).not.toContain('58')
})

it('without the source or without a figure is not judged', () => {
  expectNotJudged(interrupting, { ...subject, faultA: null }, 'source.resistance', 'step of current')
  expectNotJudged(interrupting, { ...subject, breakingA: null }, 'breaking-capacity', 'on the part')
})

// ISO 8820-3 (read-secondary): blade fuses are rated 32 V or 58 V.
it.each([
  ['just what every such part has', 32, 'pass'],
  ['more than some have', 32.1, 'caution'],
  ['just what any has', 58, 'caution'],
  ['more than any has', 58.1, 'fail']
])('%s: a bus of at most %d V', (_, mostV, verdict) => {
  expect(verdictOf(interrupting, { ...subject, busV: between(24, mostV) })).toBe(verdict)
})

it('fails beyond every voltage, whatever the short', () => {
  expect(asked(interrupting, { ...subject, faultA: null, busV: sharp(1000) })).toMatchObject({ verdict: 'fail', limit: 58 })
})

it('is a caution at best where the bus or the voltage of the part is not known, and no better for it', () => {
  expect(verdictOf(interrupting, { ...subject, busV: null })).toBe('caution')
  expect(verdictOf(interrupting, { ...subject, breakingV: null })).toBe('caution')
  expect(verdictOf(interrupting, { ...subject, busV: null, faultA: sharp(1001) })).toBe('fail')
})

it('what is given for the bus leaves a doubt only where there is none', () => {
  const given = { ...subject, breakingV: { sureV: Number.POSITIVE_INFINITY, mostV: Number.POSITIVE_INFINITY } }
  expect(verdictOf(interrupting, { ...given, busV: sharp(400) })).toBe('pass')
  const unknown = asked(interrupting, { ...given, busV: null })
  expect(unknown.verdict).toBe('caution')
  expect(unknown.says).toMatch(/the voltage of the bus is not given$/)
})

it.each([
  [32, 'pass', /at 32 V\)$/],
  [48, 'caution', /some such parts are for 32\.00 V, some for 58\.00 V, and the bus may have 48\.00 V: read the voltage on the part$/],
  [60, 'caution', /such parts are for 58\.00 V at most, and the bus may have 60\.00 V: read the voltage on the part$/]
])('what was read on the part is judged at a bus of %d V, its voltage at best doubted', (highV, verdict, says) => {
  const found = asked(interrupting, { ...subject, isPrinted: true, busV: sharp(highV) })
  expect(found).toMatchObject({ verdict, limit: 1000, says: expect.stringMatching(says) })
  expect(verdictOf(interrupting, { ...subject, isPrinted: true, busV: sharp(highV), faultA: sharp(1001) })).toBe('fail')
})

it('where it is known why there is none, that is told, and no field is asked for', () => {
  const found = asked(interrupting, { ...subject, faultA: null, unsure: { says: 'it stands elsewhere', change: 'move it' } })
  expect(found).toMatchObject({ verdict: 'not-judged', says: 'it stands elsewhere', change: 'move it' })
  expect(found.lacks).toBeUndefined()
})
