import { showNumber } from '../../quantity/show.ts'
import type { Mark } from '../../report/drawing/section.ts'

/** A depth with its name, on the right. */
export function mark(depthMm: number, text: string): Mark {
  return { depthMm, text: `${showNumber(depthMm, 'depth')} ${text}` }
}

/** The same on the left: what is new stands there, what it is held against on the right. */
export function leftMark(depthMm: number, text: string): Mark {
  return { ...mark(depthMm, text), side: 'left' }
}
