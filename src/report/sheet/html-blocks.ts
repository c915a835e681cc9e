import type { Drawing } from '../drawing/drawing.ts'
import { svgOf } from '../drawing/svg.ts'
import { verdictWord } from '../findings-text.ts'
import type { Step } from '../plan/plan.ts'
import { html } from './escape.ts'
import { PEN, tableHtml } from './html-table.ts'
import type { BigNumber, Block, Notice, StepGroup } from './sheet.ts'

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
  return `<div class="number"><dt>${html(name)}</dt><dd class="big">${bigHtml(value)}</dd><dd class="says">${html(says)}</dd></div>`
}

/** The same in another unit stands smaller, below. */
function bigHtml(value: string): string {
  const [, number, also] = /^(.*\S) (\([^()]*\))$/.exec(value) ?? []
  return number === undefined || also === undefined ? html(value) : `${html(number)}<span class="also">${html(also)}</span>`
}

function groupHtml({ heading, start, steps }: StepGroup): string {
  return `<h3>${html(heading)}</h3>\n<ol class="steps" role="list" start="${start}">\n${steps.map((step, i) => stepHtml(step, start + i)).join('\n')}\n</ol>`
}

/** Where a step comes from stands with the sources, at the end. */
function stepHtml({ figure, says, caution, blank }: Step, no: number): string {
  const number = figure === null ? '' : `<p class="figure">${bigHtml(figure.text)}</p>`
  const lines = [
    `<p>${html(says)}</p>`,
    ...(caution === null ? [] : [`<p class="doubt">Caution: ${html(caution)}</p>`]),
    ...(blank === null ? [] : [`<p class="write"><span>${html(blank)}:</span><span class="rule">${PEN}</span></p>`])
  ]
  return `<li value="${no}"><span class="tick" aria-hidden="true"></span><span class="no">${no}.</span>${number}<div>${lines.join('')}</div></li>`
}

function drawingHtml(drawing: Drawing): string {
  const { title, scale } = drawing
  const note = scale === null ? 'not to scale' : `scale ${scale} where the page is printed at full size`
  return `<figure>\n<figcaption>${html(title)} <span class="about">(${html(note)})</span></figcaption>\n${svgOf(drawing)}\n</figure>`
}
