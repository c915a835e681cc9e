// table: quick edge against the inrush; the numbers are invented
import { expect, it } from 'vitest'
import { inrush } from '../../../src/rules/protect/inrush.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

/** One step of 20 A at the most, that takes so much of the time to open. */
const step = (lastsS: number, shortestS: ReturnType<typeof between>) => ({
  currentA: between(18, 20),
  lastsS: sharp(lastsS),
  shortestS,
  takenPercent: between((100 * lastsS) / shortestS.high, (100 * lastsS) / shortestS.low)
})
const held = (lastsS: number, shortestS: ReturnType<typeof between>) => {
  const only = step(lastsS, shortestS)
  return { steps: [only], takenPercent: only.takenPercent }
}
const subject = { protector: 'fuse', currentA: between(18, 20), held: held(0.5, sharp(0.8)) }

it.each([
  ['outlasts it at the worst end', between(0.51, 2), 'pass'],
  ['may open before at the worst end', between(0.49, 2), 'fail'],
  ['just as long', between(0.5, 2), 'caution'],
  ['never opens', sharp(Number.POSITIVE_INFINITY), 'pass']
])('%s', (_, shortestS, verdict) => {
  expect(verdictOf(inrush, { ...subject, held: held(0.5, shortestS) })).toBe(verdict)
})

it('says when it may open; an edge that nobody published counts as at once', () => {
  const saysAt = (shortestS: ReturnType<typeof between>, lastsS = 0.5) => asked(inrush, { ...subject, held: held(lastsS, shortestS) }).says
  expect(saysAt(sharp(0.8))).toBe('fuse: at 20.00 A it may open in 0.80 s at the soonest; the inrush lasts 0.50 s')
  expect(saysAt(sharp(0))).toContain('no shortest time is published')
  expect(saysAt(sharp(Number.POSITIVE_INFINITY))).toContain('does not open')
  expect(saysAt(sharp(0.8), 0)).toContain('nothing behind it takes more')
})

// 0.1 s of 0.5 s and 0.9 s of 1.2 s are 95 %: each alone and both together are less than it stands.
it('several steps are judged together, and the one that takes most is named', () => {
  const first = { ...step(0.1, sharp(0.5)), currentA: sharp(40) }
  const steps = [first, step(0.9, sharp(1.2)), step(0, sharp(5))]
  const stepped = (percent: number) => asked(inrush, { ...subject, held: { steps, takenPercent: sharp(percent) } })
  const most = 'most of it at 20.00 A: there it may open in 1.2 s at the soonest, and that step lasts 0.90 s'
  expect(stepped(95)).toMatchObject({
    verdict: 'pass',
    says: `fuse: step by step the switch-on takes 95.0 % of the earliest opening times, ${most}`
  })
  expect(stepped(105).verdict).toBe('fail')
  expect(stepped(Number.POSITIVE_INFINITY)).toMatchObject({ verdict: 'fail', says: expect.stringContaining('takes more than it stands') })
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(inrush, { ...subject, held: { ...subject.held, takenPercent: assumed(sharp(60)) } })
})

it('without the inrush, or without a band, is not judged', () => {
  expectNotJudged(inrush, { ...subject, currentA: null }, 'inrush', 'clamp meter')
  expect(verdictOf(inrush, { ...subject, held: null })).toBe('not-judged')
})

it('where it is known why there is none, that is told, and no field is asked for', () => {
  const found = asked(inrush, { ...subject, currentA: null, unsure: { says: 'it stands elsewhere', change: 'move it' } })
  expect(found).toMatchObject({ verdict: 'not-judged', says: 'it stands elsewhere', change: 'move it' })
  expect(found.lacks).toBeUndefined()
})

it('names the loads that nobody knows cold, at the first of them', () => {
  const unknown = { names: ['lamp', 'fan'], at: ['circuit', 'loads', 1] }
  const found = asked(inrush, { ...subject, currentA: null, unknown })
  expect(found).toMatchObject({ verdict: 'not-judged', lacks: 'inrush', at: unknown.at, says: expect.stringContaining('of lamp, fan,') })
})

it('is a caution where a load is taken as a plain resistance', () => {
  expect(asked(inrush, { ...subject, assumedCold: ['pad'] })).toMatchObject({ verdict: 'caution', says: expect.stringContaining('of pad') })
})
