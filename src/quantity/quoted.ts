const LONGEST = 40

/** Control characters, half a pair, and characters that cannot be seen or that turn a line around. */
const HIDDEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}]/u
const EVERY_HIDDEN = new RegExp(HIDDEN, 'gu')

export function hasHidden(text: string): boolean {
  return HIDDEN.test(text)
}

/** The user's own words, fit for a terminal or a page: control characters shown as their code, long text cut. */
export function quoted(text: string): string {
  // Of a long text only the beginning is looked at.
  const visible = text.slice(0, 4 * LONGEST).replace(EVERY_HIDDEN, character => `\\u{${character.codePointAt(0)!.toString(16)}}`)
  const letters = [...visible]
  return `"${letters.length > LONGEST ? `${letters.slice(0, LONGEST).join('')}…` : visible}"`
}
