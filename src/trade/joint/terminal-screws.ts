import { SOURCES } from '../../formula/source.ts'

export interface TerminalScrew {
  readonly screw: string
  readonly leastNm: number
  readonly greatestNm: number
}

export const TERMINAL_SCREW_SOURCE = SOURCES['terminal-screws']

/** Torque of terminal screws that hold ring terminals. */
export const TERMINAL_SCREWS: readonly TerminalScrew[] = [
  { screw: 'M3.5', leastNm: 0.8, greatestNm: 1 },
  { screw: 'M4', leastNm: 1.2, greatestNm: 1.4 },
  { screw: 'M6', leastNm: 3.6, greatestNm: 5.1 },
  { screw: 'M8', leastNm: 8.2, greatestNm: 10.2 },
  { screw: 'M12', leastNm: 31.5, greatestNm: 39.5 }
]
