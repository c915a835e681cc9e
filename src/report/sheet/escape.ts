/** Control characters, half a pair, and characters that cannot be seen or that turn a line around. */
const HIDDEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}]/gu

/** What cannot be seen is shown as its code. */
export function visible(text: string): string {
  return text.replace(HIDDEN, character => `\\u{${character.codePointAt(0)!.toString(16)}}`)
}

const ENTITIES: { readonly [character: string]: string } = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }

/** Text as text, in the body of a page and in an attribute. */
export function html(text: string): string {
  return visible(text).replace(/[&<>"']/g, character => ENTITIES[character]!)
}

/** Text as text inside a string of a style sheet: everything but letters and digits as its code. */
export function css(text: string): string {
  return visible(text).replace(/[^A-Za-z0-9]/gu, character => `\\${character.codePointAt(0)!.toString(16)} `)
}

/** Text as text in Markdown: nothing in it is markup, in a table cell either. */
export function markdown(text: string): string {
  return visible(text)
    .replace(/[\\`*_{}[\]()#+\-.!|~^$:=]/g, '\\$&')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
}
