import { flag, type Rows } from './describe.ts'

/** The words that every command takes beside its own. */
export const COMMON_ROWS = {
  json: flag('print one JSON document'),
  working: flag('show every formula with its numbers and source'),
  strict: flag('cautions and what could not be judged end with 1 too'),
  'no-color': flag('no colour')
} as const satisfies Rows
