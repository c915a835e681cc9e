/**
 * What an item told in words is, without the place it sits at or the thing beside it; nothing where it is bridged or not there. In doubt it
 * is no switch: one too few is told, one too many would be counted on.
 */
export function thingIn(what: string): string {
  return OUT_OF_USE.test(what) || NONE.test(what) ? '' : what.replace(PLACE, '')
}

/** What never switches, and takes its place from what follows: `plug P3 to relay K1`. */
const JOINT = 'lead|wire|cable|plug|socket|connector|terminal|lug|crimp|splice|joint|stud|jumper|link'
const BESIDE = 'from|to|between|on|after|before|across|over|round|around|past|of|for'

/** A plug near a relay is a plug, and a lead from one is a lead; an on-off switch, one to press to test and a contact from a relay switch. */
const PLACE = new RegExp(
  String.raw`\s(?:at|near|by|beside|behind|under|above|next to|inside|(?:on|in) (?:the|a)|(?:from|to) the|(?<=\b(?:${JOINT})s? (?:[a-z]{0,3}-?\d+[a-z]? )?)(?:${BESIDE}))\s.*$`,
  'is'
)

const OUT_OF_USE = /(?<!\bnot )\b(?:by-?passed|bridged|jumpered|strapped|shorted(?: out)?|linked out|not fitted|removed)\b/i
/** `NO switch` is normally open. */
const NONE =
  /\b[Nn]o (?:switch|relay|fuse|breaker|isolator)\b|\bNO (?:SWITCH|RELAY|FUSE|BREAKER|ISOLATOR)\b|\bwithout (?:an? |any )?(?:switch|relay)\b/
