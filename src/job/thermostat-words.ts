/**
 * Whether words tell of a thermostat, or of contacts that one works, and not of a place or a thing beside it: `bimetal thermostat T1`,
 * `thermostat contacts of relay K1`, `relay K1 of thermostat T2`; no `plug at thermostat housing`. What stands behind a comma or
 * in brackets is a remark. In doubt it is none: a thermostat too few is told, one too many would be counted on.
 */
export function namesThermostat(words: string): boolean {
  const told = words.trim().toLowerCase()
  if (/\b(without|bridged|bypassed|removed|missing|dummy)\b/.test(told)) return false
  const parts = /^(.*?)\bthermostat\b(.*)$/.exec(told.split(/[,;:(]/)[0]!)
  return parts !== null && isSort(parts[1]!.trim()) && isOneItself(parts[2]!.trim())
}

const PLACE = /(^|\s)(at|by|near|beside|behind|before|after|above|below|under|over|to|from|of|for|on|in|with|no|not|next|past|round)(\s|$)/
const WORKED = /\b(relay|contacts?|switch)\b(\s+\w*\d\w*)?\s+(of|(worked|driven|switched|opened) by)(\s+(the|a))?$/

/** What may stand before it: what sort it is, or the contacts that it works. */
function isSort(before: string): boolean {
  const rest = before.replace(WORKED, '')
  return !PLACE.test(rest) && !/\b(plug|socket|connector|terminal|splice|stud|joint|lead|wire|fuse|breaker)s?$/.test(rest)
}

/** Behind it its mark, what it opens at, or its contacts: any other word would make it a thing of a thermostat. */
function isOneItself(behind: string): boolean {
  return /^((contacts?|relay|switch|\S*\d\S*|[a-z]|°c|°f|k|±|off|opens|closes)(\s+|$))*((of|for|at|on|in|by|near|behind)\s.*)?$/.test(
    behind
  )
}
