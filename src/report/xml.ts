/** What no XML 1.0 document may hold, escaped or not. */
const UNFIT = /[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu
const NAMED: { readonly [sign: string]: string } = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }

export interface Element {
  readonly name: string
  readonly attributes?: { readonly [name: string]: string | number }
  readonly inside?: readonly (Element | string)[]
}

/** An element with what is in it, indented; text is escaped. */
export function xmlText({ name, attributes = {}, inside = [] }: Element, indent = ''): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(String(value)).replace(/[\t\n\r]/g, codeOf)}"`)
  const open = `${indent}<${name}${written.join('')}`
  if (inside.length === 0) return `${open}/>`
  if (inside.every(one => typeof one === 'string')) return `${open}>${inside.map(escaped).join('\n')}</${name}>`
  const lines = inside.map(one => (typeof one === 'string' ? escaped(one) : xmlText(one, `${indent}  `)))
  return [`${open}>`, ...lines, `${indent}</${name}>`].join('\n')
}

function escaped(text: string): string {
  return text.replace(UNFIT, '\u{FFFD}').replace(/[&<>"]/g, sign => NAMED[sign]!)
}

function codeOf(sign: string): string {
  return `&#${sign.codePointAt(0)};`
}
