/**
 * Whether words tell of a thermostat, or of contacts that one works, and not of a place or a thing beside it, nor of one that is out of
 * use: `bimetal thermostat T1, 60 °C`, `thermostat contacts of relay K1`, `relay K1 of thermostat T2`; no `plug at thermostat housing`,
 * no `thermostat (linked out)`. Only words that are known to describe one may stand beside it. In doubt it is none: a thermostat too
 * few is told, one too many would be counted on.
 */
export function namesThermostat(words: string): boolean {
  const said = words.trim().toLowerCase().replace(/\.$/, '')
  if (CLOSES.test(said) && !TOLD_OPENING.test(said)) return false
  const [first, ...remarks] = said.split(SPLIT)
  const parts = /^(.*?)\bthermostat\b(.*)$/.exec(first!)
  return parts !== null && isSort(parts[1]!.trim()) && [parts[2]!, ...remarks].every(text => describes(text.trim()))
}

const SPLIT = /[,;:()]/
const MARK = '[a-z]{0,4}-?[±+-]?\\d[\\d./±+-]*[a-z°]{0,3}'
const SORT =
  'snap(?:-acting|[ -]?dis[ck])?|dis[ck]|bi-?metal(?:lic)?|capillary|adjustable|fixed|mechanical|limit|high-limit|safety|surface|frost|' +
  'immersion|clip-on|strap-on|(?:manual|auto(?:matic)?)[ -]reset|over-?temperature|normally[ -]closed|n\\.?c\\.?|dc'
const UNIT = '[a-z]|°c|°f|±'
const OPENS = '(?:off|on|opens|closes)(?: at| above| below)?(?= \\d)|opens on(?: a)? rise|at(?= \\d)'
/** What is told by where it closes alone may be one that closes as it gets hot. */
const CLOSES = /\b(on|closes)( at| above| below)? \d/
const TOLD_OPENING = /\b(off|opens)\b/
const CONTACTS = 'contacts?|relay|switch|(?<=contacts? )of(?: the| a)?(?= relay)'
const BODY = 'sump|housing|casting|block|body|case|head|tank|gearbox|engine'
const WORKED = /\b(relay|contacts?|switch)\b(\s+\w*\d\w*)?\s+(of|(worked|driven|switched|opened) by)(\s+(the|a))?$/

/** What may stand before it: what sort it is, of what body, or the contacts that it works. */
function isSort(before: string): boolean {
  return isOf(`${SORT}|${BODY}|${MARK}|${UNIT}|oil|coolant|heater|the|a`, before.replace(WORKED, '').trim())
}

/** Behind it its mark, sort and ratings, what it opens at, its contacts, or the body it sits on: any other word would make it another thing. */
function describes(behind: string): boolean {
  return isOf(`${SORT}|${MARK}|${UNIT}|${OPENS}|${CONTACTS}|(?:at|on|in|of)(?: the)?(?: oil| coolant)? (?:${BODY})`, behind)
}

function isOf(known: string, words: string): boolean {
  return new RegExp(`^(?:(?:${known})(?:\\s+|$))*$`).test(words)
}
