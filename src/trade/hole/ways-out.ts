import { silently } from '../../formula/working.ts'
import { insertFor } from '../thread/insert.ts'
import { takenDrill } from '../thread/taken-drill.ts'
import type { Thread } from '../thread/thread.ts'
import { metricThreads } from '../thread/thread-list.ts'
import { unifiedThreads } from '../thread/unified-series.ts'

/** An old hole that is too wide for the thread that was wanted. */
export interface TooWide {
  readonly thread: Thread
  /** At its widest. */
  readonly foundDiameterMm: number
  /** Beside the hole as found. */
  readonly wallMm: number | null
}

/** What can still be done, in words, the nearest first. */
export function waysOut(hole: TooWide): readonly string[] {
  return silently(() => [...insertWay(hole), ...largerWay(hole), 'another place'])
}

/** The same thread again, in a wire thread insert. */
function insertWay({ thread, foundDiameterMm, wallMm }: TooWide): readonly string[] {
  const { minorMm, majorMm, wallLeastMm } = insertFor({ majorMm: thread.majorMm, pitchMm: thread.pitchMm })
  if (foundDiameterMm >= minorMm) return []
  const leftMm = wallMm === null ? null : wallMm - (thread.majorMm - foundDiameterMm) / 2
  if (leftMm !== null && leftMm <= (majorMm - thread.majorMm) / 2) return []
  const thin = leftMm !== null && leftMm < wallLeastMm ? ', though the wall is thinner than anything can be said for' : ''
  return [
    `a wire thread insert for ${thread.name} (its hole is tapped from ${minorMm.toFixed(2)} mm up, ${majorMm.toFixed(2)} mm major)${thin}`
  ]
}

/** The next thread of its system, finer or larger, that a drill can still true the hole for, with wall left. */
function largerWay({ thread, foundDiameterMm, wallMm }: TooWide): readonly string[] {
  const known: readonly Thread[] = thread.system === 'metric' ? metricThreads() : unifiedThreads()
  const fits = known.find(
    larger =>
      larger.majorMm >= thread.majorMm &&
      (wallMm === null || wallMm > (larger.majorMm - foundDiameterMm) / 2) &&
      takenDrill(larger).diameterMm > foundDiameterMm
  )
  if (fits === undefined) return []
  const drill = `drilled ${takenDrill(fits).diameterMm.toFixed(2)} mm`
  return [`the next thread that the hole has room for, ${fits.name}, ${drill}, with a part of that thread`]
}
