import { UNITS } from '../quantity/unit-system.ts'
import { choice, flag, type Rows } from './describe.ts'

/** What every command takes beside its own options: help shows it, a shell completes it. */
export const FOR_EVERY = {
  json: flag('print one JSON document'),
  working: flag('of a quick sum: every formula with its numbers and source'),
  strict: flag('cautions and what could not be judged end with 1 too'),
  units: choice(UNITS, 'which units tables show first', { default: 'metric', why: 'the other stands beside it' }),
  quiet: flag('figures and what is less than a pass: no drawings, notes and progress'),
  'no-color': flag('no colour')
} as const satisfies Rows

export const HELP = { word: '--help', says: 'print this help' } as const
