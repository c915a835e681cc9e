import { showNumber } from '../../../quantity/show.ts'
import { inBoth, ofResult } from '../figure.ts'
import { type ScrapOf, scrap } from './scrap.ts'

/** The stop: deeper by what is left below, and the drill is through. */
export const tooDeep: ScrapOf = hole => {
  const stop = ofResult(hole.result('hole.tip-depth'), 'depth-down', 'depth stop')
  const left = hole.result('hole.metal-left')
  if (stop === null || typeof left?.value !== 'number') return undefined
  const room = left.low ?? left.value
  const says =
    room > 0
      ? `tip of the drill below the face; ${showNumber(room, 'depth-down')} mm deeper, at the worst end, and the drill is through`
      : 'tip of the drill below the face: at the worst end the drill is through already'
  return scrap(hole, inBoth(stop, 'depth-down'), room, says)
}
