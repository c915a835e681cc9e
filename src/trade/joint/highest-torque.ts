import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import { breakingPreloadN, proofPreloadN } from './body.ts'
import type { Ring } from './hollow-body.ts'
import { preloadTorqueNm } from './preload.ts'
import type { Tightening } from './tightening.ts'

export type FirstToGive = 'casting strips' | 'part strips' | 'body reaches proof' | 'part breaks'

interface Giving {
  readonly internalStripLoadN: number
  readonly externalStripLoadN: number
  readonly tensileMpa: number
  readonly proofMpa: number | null
}

const HIGHEST = fact('highestTorqueNm', { says: 'least torque at which something gives', symbol: 'Tmax', source: SOURCES.arithmetic })

/** The torque at which each thing gives, the least of them, and which that is. Without a proof stress the body counts when it breaks. */
export function highestTorque(
  { internalStripLoadN, externalStripLoadN, tensileMpa, proofMpa }: Giving,
  { armMm, threadArmMm }: Tightening,
  { ringMm, boreMm, ringAreaMm2 }: Ring
) {
  const section = { ringAreaMm2, threadArmMm, ringMm, boreMm }
  const castingStripTorqueNm = preloadTorqueNm({ armMm, preloadN: internalStripLoadN })
  const partStripTorqueNm = preloadTorqueNm({ armMm, preloadN: externalStripLoadN })
  const breakTorqueNm = preloadTorqueNm({ armMm, preloadN: breakingPreloadN({ tensileMpa, ...section }) })
  const proofTorqueNm = proofMpa === null ? null : preloadTorqueNm({ armMm, preloadN: proofPreloadN({ proofMpa, ...section }) })
  const [firstToGive, highestTorqueNm] = least([
    ['casting strips', castingStripTorqueNm],
    ['part strips', partStripTorqueNm],
    ...(proofTorqueNm === null ? [] : [['body reaches proof', proofTorqueNm] as const]),
    ['part breaks', breakTorqueNm]
  ])
  recordStep(HIGHEST, highestTorqueNm, () => firstToGive)
  return { castingStripTorqueNm, partStripTorqueNm, proofTorqueNm, breakTorqueNm, highestTorqueNm, firstToGive }
}

function least(ends: readonly (readonly [FirstToGive, number])[]): readonly [FirstToGive, number] {
  return ends.reduce((a, b) => (b[1] < a[1] ? b : a))
}
