import type { Bounded } from '../formula/bounds.ts'
import { wallLeftMm } from '../trade/hole/depth.ts'
import type { Wide } from '../trade/hole/wide.ts'
import type { WallBeside } from '../trade/joint/wall-share.ts'
import { figuresApart } from './judge.ts'

/** What the figures of a full thread in thick metal leave out. */
export interface ThreadPlace {
  /** Left out where nobody spoke of a hole: a quick sum of a joint alone. */
  readonly wall?: WallBeside
  /** The hole is, or may be, wider than the limits of its thread. */
  readonly wide?: Wide | null
}

/** No tap leaves a full thread at the worst end: a fault without any need. */
export function leavesNone({ threadDepthMm: { low } }: { readonly threadDepthMm: Bounded }): boolean {
  return !(low > 0)
}

export function wideSays({ widestMm, minorMaxMm }: Wide): string {
  return `a hole ${widestMm.toFixed(2)} mm wide, above the ${minorMaxMm.toFixed(3)} mm of its thread, leaves a shallow thread`
}

/** Why a good margin of the thread in the casting is still no pass. */
export function threadDoubts({ wall, wide }: ThreadPlace): readonly string[] {
  return [...wallDoubts(wall), ...(wide == null ? [] : [`${wideSays(wide)}, and this is reckoned with a full one`])]
}

function wallDoubts(wall: WallBeside | undefined): readonly string[] {
  if (wall === undefined) return []
  if (wall.leftMm === null) return ['casting.wall is not given: this is reckoned with metal enough around the thread']
  if (wall.shareFactor !== null) return []
  const [left, least] = figuresApart(wall.leftMm, wall.leastMm, wallLeftMm)
  return [`reckoned with metal enough around the thread, but the wall beside it is ${left}: below ${least} nobody knows what it holds`]
}
