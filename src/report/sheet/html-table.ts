import { html } from './escape.ts'
import { type Cell, readOf, type SheetTable } from './sheet.ts'

/** What a listener hears where others see room for a pen. */
export const PEN = '<span class="unseen">to be written in</span>'

/** So many rows stay on one sheet of paper. */
const TOGETHER = 8

/** The roles are said aloud: on a narrow screen the rows stand as blocks, and a browser would forget that they are rows. */
export function tableHtml({ caption, columns, rows }: SheetTable): string {
  const head = columns.map(name => `<th scope="col" role="columnheader">${html(name)}</th>`).join('')
  const body = rows.map(row => `<tr role="row">${row.map((cell, i) => cellHtml(cell, columns[i] ?? '', i === 0)).join('')}</tr>`)
  return `<table role="table"${rows.length <= TOGETHER ? ' class="together"' : ''}><caption>${html(caption)}</caption>
<thead role="rowgroup"><tr role="row">${head}</tr></thead>
<tbody role="rowgroup">
${body.join('\n')}
</tbody></table>`
}

function cellHtml(cell: Cell, label: string, heads: boolean): string {
  const read = readOf(cell)
  if (heads) return `<th scope="row" role="rowheader">${read === null ? PEN : notedHtml(read)}</th>`
  const kind = read === null ? ' class="blank"' : isShort(read.text) ? ' class="short"' : ''
  return `<td role="cell"${kind} data-label="${html(label)}">${read === null ? PEN : notedHtml(read)}</td>`
}

function notedHtml({ text, note }: { readonly text: string; readonly note: string }): string {
  return note === '' ? html(text) : `${html(text)}<span class="note">${html(note)}</span>`
}

/** A number with its unit is not torn apart. */
function isShort(text: string): boolean {
  return [...text].length <= 16
}
