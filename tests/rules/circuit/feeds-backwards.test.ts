// table: loads that a single fault feeds another way; the numbers are invented
import { expect, it } from 'vitest'
import { feedsBackwards } from '../../../src/rules/circuit/feeds-backwards.ts'
import { asked } from '../../../src/rules/rule.ts'
import { verdictOf } from '../bounded.ts'
import { walked } from './walked.ts'

const reversed = { id: 'load lamp', how: 'reversed', dropV: -6, clearedS: Number.POSITIVE_INFINITY } as const
const off = { id: 'load lamp', how: 'though switched off', dropV: 7, clearedS: Number.POSITIVE_INFINITY } as const
const through = { id: 'load lamp', how: 'through another load', dropV: 2, clearedS: Number.POSITIVE_INFINITY } as const

it.each([
  ['none', [walked({})], 'pass'],
  ['one that is fed the wrong way round', [walked({ backwards: [reversed] })], 'fail'],
  ['one that is fed through another', [walked({ backwards: [through] })], 'caution'],
  ['one that is switched off', [walked({ backwards: [off] })], 'fail'],
  ['both: the worse counts', [walked({ backwards: [through] }), walked({ backwards: [reversed] })], 'fail']
])('%s', (_, walk, verdict) => {
  expect(verdictOf(feedsBackwards, { walk })).toBe(verdict)
})

it('says which fault feeds which load, and with how much', () => {
  expect(asked(feedsBackwards, { walk: [walked({ backwards: [reversed] })] }).says).toBe(
    'run strap open: load lamp is fed backwards with 6 V'
  )
  expect(asked(feedsBackwards, { walk: [walked({ backwards: [through] }), walked({ backwards: [off] })] }).says).toBe(
    'run strap open: load lamp is fed though switched off with 7 V'
  )
})

it('names what lasts before what is cleared, and of what lasts the highest voltage', () => {
  const cleared = { ...reversed, dropV: -12, clearedS: 0.1 }
  const says = (...found: readonly (typeof reversed | typeof off | typeof cleared)[]) =>
    asked(feedsBackwards, { walk: found.map(one => walked({ backwards: [one] })) })
  expect(says(cleared, reversed, off)).toMatchObject({ says: 'run strap open: load lamp is fed though switched off with 7 V' })
  expect(says(cleared)).toMatchObject({
    verdict: 'fail',
    says: 'run strap open: load lamp is fed backwards with 12 V, cleared within 0.1 s'
  })
  // What fails goes before what is told, though it is cleared; the first of two that differ by rounding alone.
  expect(asked(feedsBackwards, { walk: [walked({ backwards: [through, cleared] })] }).verdict).toBe('fail')
  const again = { ...off, id: 'load pump', dropV: 7 + 1e-9 }
  expect(asked(feedsBackwards, { walk: [walked({ backwards: [off, again] })] }).says).toContain('load lamp')
})
