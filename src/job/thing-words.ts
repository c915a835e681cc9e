/**
 * What an item told in words is, without the place it sits at or the thing beside it; nothing where it is bridged, stuck or not there, or
 * where a joint ends its name. In doubt it is no switch: one too few is told, one too many would be counted on.
 */
export function thingIn(what: string): string {
  const fitted = what.replace(REPLACED, '')
  if ([OUT_OF_USE, NONE, EMPTY].some(words => words.test(fitted))) return ''
  const things = fitted.replace(PLACE, '').split(TOGETHER)
  return things.filter(thing => !isJoint(thing)).join(', ')
}

/** What never switches, whatever stands before it: `switch S2 terminal`; and takes its place from what follows: `plug P3 to relay K1`. */
const JOINT = [
  'lead|(?<!fus(?:e|ible)[ -])(?:wire|link)|cable|jumper|by-?pass',
  'plug|socket|connector|terminal(?: (?:block|strip|post|screw))?|lug|tab|(?<!\\d )pin|post|stud',
  'bus[ -]?bar|splice|crimp|joint'
].join('|')
/** Which of them: `87`, `P3`, `30/87`, `B+`, `no. 2`, `COM`. */
const MARK = String.raw`(?:(?:no\.?|#) ?)?(?:[a-z]{0,4}[-.]?\d[\w./+-]*|[a-z][+-]?|[+-]|com|n\.?[oc]\.?)`
const BESIDE = 'from|to|between|on|after|before|across|over|round|around|past|of|for'

/** A plug near a relay is a plug, and a lead from one is a lead; an on-off switch, one to press to test and a contact from a relay switch. */
const PLACE = new RegExp(
  String.raw`\s(?:at|near|by|beside|behind|under|above|next to|inside|in place of|instead of|(?:on|in) (?:the|a)|(?:from|to) the|(?<=\b(?:${JOINT})s? (?:${MARK} )?)(?:${BESIDE}))\s.*$`,
  'is'
)

/** Each is looked at for itself: a connector with a switch switches. */
const TOGETHER = /\s(?:with|plus|including|[+&])\s/i
const DEVICE = 'switch|relay|fuse|breaker|protector|isolator|contactor|disconnector'
const PLACED = `${BESIDE}|in|into|via|through|off|against|feeding|protecting|supplying`
/** `relay K1 in socket` is a relay, and so is one of five pins: `5-pin`. */
const ENDS_AS_JOINT = new RegExp(
  String.raw`^(?!.*\b(?:${DEVICE})\b.*\s(?:${PLACED})\s).*(?<!\b\d+-)\b(?:${JOINT})s?(?:\s+${MARK}(?:\s+and\s+${MARK})?)?$`,
  'is'
)
const JOINT_ALONE = new RegExp(String.raw`^(?:${JOINT})(?:\s+${MARK})?$`, 'i')
const NAMES_DEVICE = new RegExp(String.raw`\b(?:${DEVICE})\b`, 'i')

/** A remark makes it one where it is a joint of a device, or a joint and no more: `relay K1, terminal 87`; a fuse with an M6 stud is a fuse. */
function isJoint(thing: string): boolean {
  const [name, ...remarks] = thing.split(/[,;:()]/).map(text => text.trim())
  const isOne = (remark: string) => JOINT_ALONE.test(remark) || (NAMES_DEVICE.test(remark) && ENDS_AS_JOINT.test(remark))
  return ENDS_AS_JOINT.test(name!) || remarks.some(isOne)
}

/** What stands in its place decides; a new one is what it was, and so is one that a person put in. */
const PERSON = 'mechanic|fitter|electrician|technician|owner|dealer|workshop|garage|yard|maker|me|us'
const AS_IT_WAS = String.raw`(?:an? |the )?(?:new|same|like|another|other|better|stronger)\b(?! (?:(?!${DEVICE})[a-z]+ )?(?:${JOINT})s?\b)|one of \d+(?:[.,]\d+)? ?[av]\b|(?:an? |the |our )?(?:${PERSON})\W*$`
const REPLACED = new RegExp(String.raw`^.*\breplaced (?:by|with)\b(?! (?:${AS_IT_WAS}))`, 'is')
/** A relay without its cover is one still, and a switch without its jumper all the more; each told for itself, behind a comma. */
const OFF_IT = '(?:cover|lid|boot|label|tag|marking)'
const ONLY = String.raw`(?:^|[,;:(])\s*(?:the |its )?`
const END = String.raw`(?=\W*$|\s*[,;:.()])`
const OUT_OF_USE = new RegExp(
  String.raw`(?<!\b(?:not|no longer) )\b(?:${[
    'by-?passed|bridged|jumpered|strapped|shorted(?: out)?|linked out|(?:not|no longer) fitted|defeated',
    `(?<!${ONLY}(?:${OFF_IT}|jumper|by-?pass|bridge)s? )removed`,
    `(?<!${ONLY}${OFF_IT}s? )missing(?! (?:the |its )?${OFF_IT}s?\\b)`,
    `(?:welded|soldered|seized|stuck|jammed|wedged|taped|tied|failed|locked|permanently|hard-? ?wired) (?:closed|shut|on${END})`,
    '(?:welded|soldered) together',
    '(?<!\\bno )jumper(?: wire| lead)? (?:across|fitted|in place|over)',
    String.raw`(?:welded|contacts soldered|pulled(?: out)?)(?=\W*$)`
  ].join('|')})\b`,
  'i'
)
/** `NO switch` is normally open. */
const NONE =
  /\b[Nn]o (?:switch|relay|fuse|breaker|isolator)\b|\bNO (?:SWITCH|RELAY|FUSE|BREAKER|ISOLATOR)\b|\bwithout (?:an? |any )?(?:switch|relay)\b/
const EMPTY =
  /\bdummy (?:fuse|switch|relay)\b|\bempty\b.*\b(?:holder|slot)\b|\b(?:holder|slot)\b.*\bempty\b|\bholder without (?:an? |any )?fuse\b/i
