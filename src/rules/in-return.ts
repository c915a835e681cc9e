import { plainly } from './judge.ts'
import type { Judged } from './rule.ts'

/** What a protector in the return is to be told. */
export const MOVE = 'move it to the feed, right at the source'

/** What comes back need not come through it: a feed that chafes through goes to ground before the load. */
export function inReturn(protector: string, bare: readonly string[]): Judged {
  const says = `${protector}: it stands in the return, and a short of the feed to ground goes round it`
  if (bare.length > 0) return { ...plainly('fail', `${says}: nothing protects the feed of ${bare.join(', ')}`), change: MOVE }
  return { ...plainly('caution', `${says}; when it opens, its load is left live`), change: 'leave it out: the feed has one' }
}
