import { formula } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'

// Angles are seen from the head, clockwise, the way the part is tightened.

export const clockTurnDeg = formula('clockTurnDeg', {
  says: 'turn from the lowest torque on until the connector points the way it should',
  symbol: 'φ',
  equation: 'w - n + 360·z',
  inputs: { wantDeg: ['w', -720, 720], nowDeg: ['n', -720, 720], wholeTurns: ['z', -4, 4] },
  source: SOURCES.geometry,
  of: ({ wantDeg, nowDeg, wholeTurns }) => wantDeg - nowDeg + 360 * wholeTurns
})

export const clockShimMm = formula('clockShimMm', {
  says: 'shim under the shoulder that lets the connector point the way it should at the lowest torque',
  symbol: 's',
  equation: 'P·(360 - φ)/360',
  inputs: { pitchMm: ['P', 0.2, 8], clockTurnDeg: ['φ', -2000, 2000] },
  source: SOURCES.geometry,
  of: ({ pitchMm, clockTurnDeg: turnDeg }) => (pitchMm * (360 - turnDeg)) / 360
})

export const clockThinnerMm = formula('clockThinnerMm', {
  says: 'the same with a stack thinner by so much',
  symbol: 's2',
  equation: 'P·φ/360',
  inputs: { pitchMm: ['P', 0.2, 8], clockTurnDeg: ['φ', -2000, 2000] },
  source: SOURCES.geometry,
  of: ({ pitchMm, clockTurnDeg: turnDeg }) => (pitchMm * turnDeg) / 360
})

/** A connector that has to point somewhere, and how far the part may turn for it. */
export interface Clocking {
  /** Where it points at the lowest torque. */
  readonly nowDeg: Given
  readonly wantDeg: Given
  /** How far the part turns from the lowest torque to the highest. */
  readonly bandDeg: Given
  /** Whole turns that bring the way there between nought and one; exact, from the nominal angles. */
  readonly wholeTurns: number
}

export function clockingOf({ nowDeg, wantDeg, bandDeg }: Omit<Clocking, 'wholeTurns'>): Clocking {
  return { nowDeg, wantDeg, bandDeg, wholeTurns: Math.ceil((nowDeg.value - wantDeg.value) / 360) }
}

/** The way to turn, what of the band is left, and what to change under the shoulder where it is not enough. */
export function clocked({ nowDeg, wantDeg, bandDeg, wholeTurns }: Plain<Clocking>, pitchMm: number) {
  const turnDeg = clockTurnDeg({ wantDeg, nowDeg, wholeTurns })
  const x = { pitchMm, clockTurnDeg: turnDeg }
  return { turnDeg, leftDeg: clockLeftDeg({ bandDeg, clockTurnDeg: turnDeg }), shimMm: clockShimMm(x), thinnerMm: clockThinnerMm(x) }
}

export const clockLeftDeg = formula('clockLeftDeg', {
  says: 'what is left of the turn that the torque band allows',
  symbol: 'u',
  equation: 'b - φ',
  inputs: { bandDeg: ['b', 0, 3600], clockTurnDeg: ['φ', -2000, 2000] },
  source: SOURCES.geometry,
  of: ({ bandDeg, clockTurnDeg: turnDeg }) => bandDeg - turnDeg
})
