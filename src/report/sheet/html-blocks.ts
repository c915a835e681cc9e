import type { Drawing } from '../drawing/drawing.ts'
import { svgOf } from '../drawing/svg.ts'
import { verdictWord } from '../findings-text.ts'
import type { Step } from '../plan/plan.ts'
import { sourceNote } from '../plan/source-note.ts'
import { html } from './escape.ts'
import type { BigNumber, Block, Cell, Notice, SheetTable, StepGroup } from './sheet.ts'

/** One block of a section as HTML. */
export function blockHtml(block: Block): string {
  switch (block.kind) {
    case 'text':
      return `<p>${html(block.text)}</p>`
    case 'notices':
      return block.notices.map(noticeHtml).join('\n')
    case 'numbers':
      return `<h3>${html(block.caption)}</h3>\n<dl class="numbers">${block.numbers.map(numberHtml).join('')}</dl>`
    case 'table':
      return tableHtml(block)
    case 'steps':
      return block.groups.map(groupHtml).join('\n')
    case 'drawing':
      return drawingHtml(block.drawing)
    default:
      return block satisfies never
  }
}

function noticeHtml({ level, head, says, change }: Notice): string {
  const lines = [
    `<p class="head">${html(verdictWord(level))}${head === '' ? '' : `: ${html(head)}`}</p>`,
    `<p>${html(says)}</p>`,
    ...(change === '' ? [] : [`<p>To change: ${html(change)}</p>`])
  ]
  return `<div class="notice ${level}">${lines.join('')}</div>`
}

function numberHtml({ value, name, says }: BigNumber): string {
  return `<div class="number"><dt>${html(name)}</dt><dd class="big">${html(value)}</dd><dd class="says">${html(says)}</dd></div>`
}

/** The roles are said aloud: on a narrow screen the rows stand as blocks, and a browser would forget that they are rows. */
function tableHtml({ caption, columns, rows }: SheetTable): string {
  const head = columns.map(name => `<th scope="col" role="columnheader">${html(name)}</th>`).join('')
  const body = rows.map(row => `<tr role="row">${row.map((cell, i) => cellHtml(cell, columns[i] ?? '', i === 0)).join('')}</tr>`).join('\n')
  return `<table role="table"><caption>${html(caption)}</caption>
<thead role="rowgroup"><tr role="row">${head}</tr></thead>
<tbody role="rowgroup">
${body}
</tbody></table>`
}

function cellHtml(cell: Cell, label: string, heads: boolean): string {
  if (heads) return `<th scope="row" role="rowheader">${typeof cell === 'string' ? html(cell) : PEN}</th>`
  return typeof cell === 'string'
    ? `<td role="cell" data-label="${html(label)}">${html(cell)}</td>`
    : `<td role="cell" class="blank" data-label="${html(label)}">${PEN}</td>`
}

const PEN = '<span class="unseen">to be written in</span>'

function groupHtml({ heading, start, steps }: StepGroup): string {
  return `<h3>${html(heading)}</h3>\n<ol class="steps" role="list" start="${start}">\n${steps.map((step, i) => stepHtml(step, start + i)).join('\n')}\n</ol>`
}

function stepHtml({ figure, says, caution, blank, source }: Step, no: number): string {
  const from = sourceNote(source)
  const lines = [
    ...(figure === null ? [] : [`<p class="figure">${html(figure.text)}</p>`]),
    `<p>${html(says)}</p>`,
    ...(caution === null ? [] : [`<p class="doubt">Caution: ${html(caution)}</p>`]),
    ...(from === '' ? [] : [`<p class="from">${html(from)}</p>`]),
    ...(blank === null ? [] : [`<p class="write"><span>${html(blank)}:</span><span class="rule">${PEN}</span></p>`])
  ]
  return `<li value="${no}"><span class="tick" aria-hidden="true"></span><span class="no">${no}.</span><div>${lines.join('')}</div></li>`
}

function drawingHtml(drawing: Drawing): string {
  const { title, scale } = drawing
  const note = scale === null ? 'not to scale' : `scale ${scale} where the page is printed at full size`
  return `<figure>\n<figcaption>${html(title)} <span class="about">(${html(note)})</span></figcaption>\n${svgOf(drawing)}\n</figure>`
}
