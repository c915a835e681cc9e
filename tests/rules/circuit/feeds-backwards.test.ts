// table: loads that a single fault feeds another way; the numbers are invented
import { expect, it } from 'vitest'
import { feedsBackwards } from '../../../src/rules/circuit/feeds-backwards.ts'
import { asked } from '../../../src/rules/rule.ts'
import { verdictOf } from '../bounded.ts'
import { walked } from './walked.ts'

const reversed = { id: 'load lamp', how: 'reversed', dropV: -6 } as const
const off = { id: 'load lamp', how: 'though switched off', dropV: 7 } as const
const through = { id: 'load lamp', how: 'through another load', dropV: 2 } as const

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
