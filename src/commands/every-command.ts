import { flag, type Rows } from './describe.ts'

/** What every command takes beside its own options: help shows it, a shell completes it. */
export const FOR_EVERY = {
  json: flag('print one JSON document'),
  working: flag('show every formula with its numbers and source'),
  strict: flag('cautions and what could not be judged end with 1 too'),
  'no-color': flag('no colour')
} as const satisfies Rows

export const HELP = { word: '--help', says: 'print this help' } as const
