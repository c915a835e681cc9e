import { quoted } from '../quantity/quoted.ts'
import { showNumber } from '../quantity/show.ts'
import { PROTECTION_STYLES, styleOf } from '../trade/circuit/protection-styles.ts'
import { type JobItem, markedItem } from './circuit-names.ts'
import type { Job } from './read-job.ts'
import type { LinkFault } from './unknown-name.ts'

type Wire = NonNullable<Job['circuit']>['runs'][number]['wire']

/** What is told of a fuse, breaker, switch or connection that is not of its kind. */
export function throughLinks(item: JobItem, wire: Wire): readonly LinkFault[] {
  return [...placeLinks(item, wire), ...ratingLinks(item), ...boundedLinks(item), ...styleLinks(item), ...breakingLinks(item)]
}

/** A rating that no rule asks for would be taken for judged. */
function ratingLinks(item: JobItem): readonly LinkFault[] {
  if (item.rating === null || item.what === null || markedItem(item).does === 'switches') return []
  const accepted = 'rating of what is named as fuse, breaker, switch or thermostat, or of a relay'
  return [{ found: `a rating of ${quoted(item.what)}`, accepted, path: [...item.path, 'rating'] }]
}

/** What is stamped on one part is one number. */
function boundedLinks({ fuse, breaker, rating, path }: JobItem): readonly LinkFault[] {
  const named = fuse ?? breaker
  if (named === null || rating === null || rating.low === rating.high) return []
  const [low, high] = [rating.low, rating.high].map(ratingA => showNumber(ratingA, 'plain'))
  return [{ found: `rating of ${quoted(named)} with bounds, ${low} to ${high} A`, accepted: RATED, path: [...path, 'rating'] }]
}

const RATED = 'the one rating that stands on the part'

/** A fuse opens by the band of a fuse, a breaker by that of a breaker. */
function styleLinks({ fuse, breaker, style, path }: JobItem): readonly LinkFault[] {
  const named = fuse !== null ? 'fuse' : breaker !== null ? 'breaker' : null
  if (style === null || named === null || styleOf(style).kind === named) return []
  const styles = PROTECTION_STYLES.flatMap(({ id, kind }) => (kind === named ? [id] : []))
  return [{ found: `a ${named} of the style ${quoted(style)}`, accepted: `for a ${named} ${styles.join(', ')}`, path: [...path, 'style'] }]
}

/** What a switch can break is its rating; what breaks nothing is no protector. */
function breakingLinks({ fuse, breaker, 'breaking-capacity': breaking, path }: JobItem): readonly LinkFault[] {
  if (breaking === null) return []
  const at = [...path, 'breaking-capacity']
  if ((fuse ?? breaker) === null) {
    const accepted = 'breaking-capacity of a fuse or breaker alone'
    return [{ found: 'breaking-capacity of what is no fuse and no breaker', accepted, path: at }]
  }
  if (breaking.low > 0) return []
  return [{ found: 'a breaking-capacity of nothing', accepted: 'more than 0 A, bounds and all', path: at }]
}

/** Where on the wire of its run: asked of what protects, and of a run that has a wire. */
function placeLinks({ fuse, breaker, along, path }: JobItem, wire: Wire): readonly LinkFault[] {
  if (along === null) return []
  const at = [...path, 'along']
  if (fuse === null && breaker === null)
    return [{ found: 'along of what is no fuse and no breaker', accepted: 'along of a fuse or breaker alone', path: at }]
  if (wire === null) return [{ found: 'along in a run without wire', accepted: 'along beside the wire of its run', path: at }]
  if (along.low <= wire.length.high) return []
  return [{ found: 'along beyond the end of the wire', accepted: 'along of at most the length of the wire of its run', path: at }]
}
