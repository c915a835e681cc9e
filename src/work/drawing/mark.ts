import type { Shown } from '../../quantity/digits.ts'
import { showNumber } from '../../quantity/show.ts'
import type { Mark } from '../../report/drawing/section.ts'

/** A depth with its name, on the right. */
export function mark(depthMm: number, text: string, shown: Shown = 'depth'): Mark {
  return { depthMm, text: `${showNumber(depthMm, shown)} ${text}` }
}

/** The same on the left: what is new stands there, what it is held against on the right. */
export function leftMark(depthMm: number, text: string, shown: Shown = 'depth'): Mark {
  return { ...mark(depthMm, text, shown), side: 'left' }
}
