import { silently } from '../../formula/working.ts'
import { threadWallLeastMm } from '../hole/wall.ts'
import { dilation } from './strength-ratio.ts'

/** The wall beside a thread, at its thinnest, and what it leaves of the strength of the thread. */
export interface WallBeside {
  readonly leftMm: number | null
  /** Null where the wall is not known, or so thin that no factor is. */
  readonly shareFactor: number | null
  readonly leastMm: number
}

/** As if the metal were so thin all around: the careful side. */
export function wallBeside({ leftMm, majorMm }: { readonly leftMm: number | null; readonly majorMm: number }): WallBeside {
  const leastMm = silently(() => threadWallLeastMm({ majorMm }))
  const known = leftMm !== null && leftMm >= leastMm
  const shareFactor = known ? silently(() => dilation({ bossMm: Math.max(1.4 * majorMm, majorMm + 2 * leftMm), majorMm })) : null
  return { leftMm, shareFactor, leastMm }
}
