import type { Bounded } from '../../formula/bounds.ts'

/** That of several heated parts which may get hottest; null where none is told apart from its casting. */
export function hottestPart(bodiesC: readonly Bounded[]): Bounded | null {
  return bodiesC.reduce<Bounded | null>((hottest, bodyC) => (hottest === null || bodyC.high > hottest.high ? bodyC : hottest), null)
}
