import { Given } from '../../../src/formula/given.ts'
import type { Friction, Joint } from '../../../src/trade/joint/joint.ts'

/** Within so many percent of a number. */
export function within(value: number, percent: number, assumed?: string): Given {
  const off = (value * percent) / 100
  return new Given(value, { low: value - off, high: value + off, assumed })
}

/** Invented: a hollow brass body in an aluminium casting. Limits of size are those of M12x1.5, 6H/6g. */
const THREAD = {
  majorMm: 12,
  pitchMm: 1.5,
  pitchDiameterMm: 11.0257214,
  stressAreaMm2: 88.1259764,
  screwMajorMinMm: 11.732,
  screwPitchMinMm: 10.854,
  holeMinorMaxMm: 10.676,
  holePitchMaxMm: 11.216
}

export const BY_FACTOR: Friction = { by: 'nut-factor', nutFactor: within(0.17, 15), bearingDiameterMm: within(14.5, 2) }
export const BY_FRICTION: Friction = {
  by: 'friction',
  threadFrictionFactor: within(0.14, 10),
  bearingFrictionFactor: within(0.18, 10),
  bearingDiameterMm: within(14.5, 2)
}

export const JOINT: Joint = {
  thread: THREAD,
  engagementMm: within(9.4, 4),
  castingShearMpa: within(190, 8),
  tensileMpa: within(360, 3),
  proofMpa: within(250, 4),
  neckMm: within(9.8, 1),
  boreMm: within(7, 1),
  friction: BY_FACTOR,
  torqueNm: within(9, 4),
  clampN: within(2500, 5),
  bearing: { faceMm: within(17, 1), holeMm: within(12.5, 1) }
}

/** Nothing but what must be given. */
export const BARE: Joint = {
  ...JOINT,
  proofMpa: null,
  neckMm: null,
  boreMm: null,
  friction: null,
  torqueNm: null,
  clampN: null,
  bearing: null
}
