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

/** Marks wherever they stand; those that begin a line; what would become a link or a picture by itself. */
const ANYWHERE = /[\\`*_[\]|~$^@]/g
const FIRST = /^(\s*)([+-](?=\s|$)|-(?=-)|=|#(?=[#\s]|$)|\d+(?=[.)](?:\s|$)))/
const LINKING = /:(?=\/\/|[\w+-]+:)|(?<=www)\./gi

/** Text as text in Markdown: nothing in it is markup, in a table cell either, and no more is escaped than must be, for whoever reads it raw. */
export function markdown(text: string): string {
  return visible(text)
    .replace(ANYWHERE, '\\$&')
    .replace(FIRST, (_, space: string, mark: string) => (/\d/.test(mark) ? `${space}${mark}\\` : `${space}\\${mark}`))
    .replace(LINKING, '\\$&')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
}
