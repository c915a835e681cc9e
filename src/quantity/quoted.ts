const LONGEST = 40

/** Control characters, half a pair, and characters that cannot be seen or that turn a line around. */
const HIDDEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}]/u
const EVERY_HIDDEN = new RegExp(HIDDEN, 'gu')

export function hasHidden(text: string): boolean {
  return HIDDEN.test(text)
}

/** A name from outside, whole, as a terminal may show it: what would act or hide stands there as its code. */
export function visible(text: string): string {
  return text.replace(EVERY_HIDDEN, character => `\\u{${character.codePointAt(0)!.toString(16)}}`)
}

/** The user's own words, fit for a terminal or a page: control characters shown as their code, long text cut. */
export function quoted(text: string): string {
  // Of a long text only the beginning is looked at.
  const shown = visible(text.slice(0, 4 * LONGEST))
  const letters = [...shown]
  return `"${letters.length > LONGEST ? `${letters.slice(0, LONGEST).join('')}…` : shown}"`
}
