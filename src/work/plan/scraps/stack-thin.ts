import { showNumber } from '../../../quantity/show.ts'
import { ofNumber } from '../figure.ts'
import { type ScrapOf, scrap } from './scrap.ts'

/** What lies under the shoulder, where it is what keeps the part off. */
export const stackThin: ScrapOf = hole => {
  const least = hole.result('seat.least-stack')
  const stack = hole.hole['under-shoulder'].reduce((sum, { thickness }) => sum + thickness.value, 0)
  if (typeof least?.value !== 'number' || stack === 0) return undefined
  const needed = least.high ?? least.value
  if (needed <= 0) return undefined
  const says = `under the shoulder: below ${showNumber(needed, 'depth-up')} mm, at the worst end, the part jams before its shoulder lands`
  return scrap(hole, ofNumber('stackMm', 'stack', stack), stack - needed, says)
}
