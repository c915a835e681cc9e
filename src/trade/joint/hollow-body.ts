import { NoAnswer } from '../../formula/no-answer.ts'
import * as body from './body.ts'
import { threadTorqueNm as twistNm } from './preload.ts'

/** The section that carries the load, outside and inside. */
export interface Ring {
  readonly ringMm: number
  readonly boreMm: number
  readonly ringAreaMm2: number
}

/** The ring of the thread's stress area. */
export function threadRing({ stressAreaMm2, boreMm }: { readonly stressAreaMm2: number; readonly boreMm: number }): Ring {
  return ringOf(body.stressDiameterMm({ stressAreaMm2 }), boreMm)
}

/** The lesser of stress area and neck area: the bore is the same in both. */
export function leastRing(thread: Ring, neckMm: number | null): Ring {
  return neckMm !== null && neckMm < thread.ringMm ? ringOf(neckMm, thread.boreMm) : thread
}

function ringOf(ringMm: number, boreMm: number): Ring {
  if (boreMm < ringMm) return { ringMm, boreMm, ringAreaMm2: body.ringAreaMm2({ ringMm, boreMm }) }
  const [bore, ring] = [boreMm.toFixed(2), ringMm.toFixed(2)]
  throw new NoAnswer(
    `a bore of ${bore} mm leaves no metal in a section of ${ring} mm`,
    `measure again: the bore has to be below ${ring} mm`
  )
}

/** What the preload and its share of the torque do to a ring. */
export function stresses(
  { ringMm, boreMm, ringAreaMm2 }: Ring,
  { preloadN, threadArmMm }: { readonly preloadN: number; readonly threadArmMm: number }
) {
  const tensionMpa = body.tensionMpa({ preloadN, ringAreaMm2 })
  const threadTorqueNm = twistNm({ threadArmMm, preloadN })
  const torsionMpa = body.torsionMpa({ threadTorqueNm, ringMm, boreMm })
  return { tensionMpa, combinedMpa: body.combinedMpa({ tensionMpa, torsionMpa }) }
}
