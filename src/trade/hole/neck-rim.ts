import { formula } from '../../formula/formula.ts'
import { Given, type Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'

/** A neck that may not go between the threads of its hole. */
export interface Rim {
  readonly neckMm: Given
  /** How long it is, from the shoulder. */
  readonly undercutMm: Given
  /** Between the crests of the thread in the hole, as it was drilled. */
  readonly clearMm: Given
  /** Basic minor diameter, where the mouth's countersink ends. */
  readonly minorMm: Given
}

interface Told {
  /** Null where nobody told how wide it is. */
  readonly neckMm: Given | null
  readonly undercutMm: Given
  readonly clearMm: number
  readonly minorMm: number
}

/** Null where the part tells no neck, one of no length, one that goes between the threads, or not how long it is. */
export function wideNeck({ neckMm, undercutMm, clearMm, minorMm }: Told): Rim | null {
  const told = undercutMm.assumed === undefined && undercutMm.high > 0
  if (neckMm === null || !told || neckMm.high <= clearMm) return null
  return { neckMm, undercutMm, clearMm: new Given(clearMm), minorMm: new Given(minorMm) }
}

export const neckRoomMm = formula('neckRoomMm', {
  says: "how deep the mouth's 90° countersink takes a neck wider than the hole, until it stands on the rim",
  symbol: 'ln',
  equation: 'max(0, lm - (dn - D1)/2)',
  inputs: { mouthMm: ['lm', 0, 300], neckMm: ['dn', 0, 300], minorMm: ['D1', 0.7, 300] },
  source: SOURCES.geometry,
  of: ({ mouthMm, neckMm, minorMm }) => Math.max(0, mouthMm - (neckMm - minorMm) / 2)
})

export const neckGapMm = formula('neckGapMm', {
  says: 'room before a wide neck stands on the rim when the shoulder lands; negative: it does, and leaves that gap',
  symbol: 'g5',
  equation: 'ln + t - k - u',
  inputs: { neckRoomMm: ['ln', -300, 500], stackMm: ['t', 0, 150], crushMm: ['k', 0, 50], undercutMm: ['u', 0, 300] },
  source: SOURCES.geometry,
  of: ({ neckRoomMm, stackMm, crushMm, undercutMm }) => neckRoomMm + stackMm - crushMm - undercutMm
})

export const bareNeckGapMm = formula('bareNeckGapMm', {
  says: 'room before a wide neck stands on the rim, with nothing under the shoulder; negative: the gap left there',
  symbol: 'g6',
  equation: 'ln - u',
  inputs: { neckRoomMm: ['ln', -300, 500], undercutMm: ['u', 0, 300] },
  source: SOURCES.geometry,
  of: ({ neckRoomMm, undercutMm }) => neckRoomMm - undercutMm
})

export const neckStackMm = formula('neckStackMm', {
  says: 'stack before crush that just keeps a wide neck off the rim',
  symbol: 't3',
  equation: 'u - ln + k',
  inputs: { undercutMm: ['u', 0, 300], neckRoomMm: ['ln', -300, 500], crushMm: ['k', 0, 50] },
  source: SOURCES.geometry,
  of: ({ undercutMm, neckRoomMm, crushMm }) => undercutMm - neckRoomMm + crushMm
})

interface Around {
  readonly mouthMm: number
  readonly threadDepthMm: number
  readonly stackMm: number
  readonly crushMm: number
}

/** Where a wide neck stops its part. At an end of its bounds at which it goes between the threads, it goes as deep as they do. */
export function onItsRim({ neckMm, undercutMm, clearMm, minorMm }: Plain<Rim>, { mouthMm, threadDepthMm, stackMm, crushMm }: Around) {
  const roomMm = neckMm > clearMm ? neckRoomMm({ mouthMm, neckMm, minorMm }) : between(threadDepthMm)
  return {
    withStackMm: neckGapMm({ neckRoomMm: roomMm, stackMm, crushMm, undercutMm }),
    withoutStackMm: bareNeckGapMm({ neckRoomMm: roomMm, undercutMm }),
    leastStackMm: neckStackMm({ undercutMm, neckRoomMm: roomMm, crushMm })
  }
}

function between(threadDepthMm: number): number {
  recordStep(neckRoomMm, threadDepthMm, () => 'lt: it goes between the threads')
  return threadDepthMm
}
