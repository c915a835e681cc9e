import type { Given, Plain } from '../../formula/given.ts'
import * as conduction from './conduction.ts'

/** The heated part as a body of its own; of several, each of them. */
export interface Body {
  readonly massKg: Given
  readonly heatJPerKgK: Given
  readonly contactMm2: Given
  readonly contactM2KPerW: Given
}

export function allW(heatersW: readonly number[]): number {
  return heatersW.reduce((sum, heaterW) => sum + heaterW, 0)
}

/** All of them as one body, being alike and warming one casting. */
export function asOne(body: Plain<Body>, count: number): Plain<Body> {
  return { ...body, massKg: count * body.massKg, contactMm2: count * body.contactMm2 }
}

/** Each of them on a casting that has settled: all that a heater gives goes through the joint of its own part. None where they are not told apart. */
export function bodiesC(
  body: Pick<Plain<Body>, 'contactMm2' | 'contactM2KPerW'> | null,
  castingC: number,
  heatersW: readonly number[]
): readonly number[] {
  if (body === null) return []
  const jointWPerK = conduction.jointWPerK(body)
  return heatersW.map(powerW => conduction.bodyC({ castingC, powerW, jointWPerK }))
}

/** What the heated parts are at together, where their resistance follows: the casting, where they are not told apart. */
export function partC(castingC: number, bodies: readonly number[]): number {
  return bodies.length === 0 ? castingC : bodies.reduce((sum, bodyC) => sum + bodyC, 0) / bodies.length
}
