import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import { proofPreloadN } from './body.ts'
import type { Ring } from './hollow-body.ts'
import { preloadTorqueNm } from './preload.ts'
import type { Tightening } from './tightening.ts'

export type FirstToGive = 'casting strips' | 'part strips' | 'body reaches proof'

interface Giving {
  readonly internalStripLoadN: number
  readonly externalStripLoadN: number
  readonly proofMpa: number | null
}

const HIGHEST = fact('highestTorqueNm', { says: 'least torque at which something gives', symbol: 'Tmax', source: SOURCES.arithmetic })

/** The torque at which each thing gives, the least of them, and which that is. Without a proof stress the body is not judged. */
export function highestTorque(
  { internalStripLoadN, externalStripLoadN, proofMpa }: Giving,
  { armMm, threadArmMm }: Tightening,
  ring: Ring
) {
  const castingStripTorqueNm = preloadTorqueNm({ armMm, preloadN: internalStripLoadN })
  const partStripTorqueNm = preloadTorqueNm({ armMm, preloadN: externalStripLoadN })
  const proofTorqueNm = proofMpa === null ? null : preloadTorqueNm({ armMm, preloadN: atProofN(proofMpa, threadArmMm, ring) })
  const [firstToGive, highestTorqueNm] = least([
    ['casting strips', castingStripTorqueNm],
    ['part strips', partStripTorqueNm],
    ['body reaches proof', proofTorqueNm ?? Number.POSITIVE_INFINITY]
  ])
  recordStep(HIGHEST, highestTorqueNm, () => firstToGive)
  return { castingStripTorqueNm, partStripTorqueNm, proofTorqueNm, highestTorqueNm, firstToGive }
}

function atProofN(proofMpa: number, threadArmMm: number, { ringMm, boreMm, ringAreaMm2 }: Ring): number {
  return proofPreloadN({ proofMpa, ringAreaMm2, threadArmMm, ringMm, boreMm })
}

function least(ends: readonly (readonly [FirstToGive, number])[]): readonly [FirstToGive, number] {
  return ends.reduce((a, b) => (b[1] < a[1] ? b : a))
}
