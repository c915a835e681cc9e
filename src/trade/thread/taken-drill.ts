import { fewRecalled } from '../../formula/few-recalled.ts'
import type { Drill } from './drill.ts'
import { publishedTapDrill } from './published-tap-drill.ts'
import { tapDrills } from './tap-drills.ts'
import type { Thread } from './thread.ts'
import { minorLimits } from './thread-results.ts'

export interface TakenDrill {
  readonly diameterMm: number
  readonly drill: Drill | null
  readonly why: string
}

/** The drill that is taken where nobody named one: the published one; where its hole lies outside the limits of the thread, the largest inside. */
export const takenDrill = fewRecalled(8, (thread: Thread): TakenDrill => {
  const { diameterMm, drill } = publishedTapDrill(thread)
  const minor = minorLimits(thread)
  const published = { diameterMm, drill, why: 'the published tap drill' }
  if (diameterMm >= minor.minMm && diameterMm <= minor.maxMm) return published
  const { majorMm, pitchMm } = thread
  const inside = tapDrills({ majorMm, pitchMm, minor, publishedMm: diameterMm }).findLast(({ within }) => within)
  if (inside === undefined) return published
  const side = diameterMm > minor.maxMm ? 'above' : 'below'
  const name = drill?.name ?? `${diameterMm} mm`
  return {
    diameterMm: inside.diameterMm,
    drill: inside,
    why: `the largest drill inside the limits: the published ${name} lies ${side} them`
  }
})
