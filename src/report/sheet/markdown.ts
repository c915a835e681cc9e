import { verdictWord } from '../findings-text.ts'
import type { Step } from '../plan/plan.ts'
import { markdown } from './escape.ts'
import { type Block, type Cell, type Notice, readOf, type Section, type Sheet, type SheetTable } from './sheet.ts'

/** The same sheet as Markdown. A drawing is told in words. */
export function sheetMarkdown({ title, file, practice, verdict, sections }: Sheet): string {
  const head = [`# ${markdown(title)}`, `${markdown(file)}, practice: ${markdown(practice)}`, `**${verdictWord(verdict)}**`]
  return `${[...head, ...sections.map(sectionText)].join('\n\n')}\n`
}

function sectionText({ heading, blocks }: Section): string {
  return [`## ${markdown(heading)}`, ...blocks.map(blockText)].join('\n\n')
}

function blockText(block: Block): string {
  switch (block.kind) {
    case 'text':
      return markdown(block.text)
    case 'notices':
      return block.notices.map(noticeText).join('\n')
    case 'numbers': {
      const rows = block.numbers.map(({ value, name, says }) => [name, value, says])
      return tableText({ kind: 'table', caption: block.caption, columns: ['what', 'number', 'how'], rows })
    }
    case 'table':
      return tableText(block)
    case 'steps':
      return block.groups.map(({ heading, start, steps }) => `### ${markdown(heading)}\n\n${stepsText(steps, start)}`).join('\n\n')
    case 'drawing':
      return `**${markdown(block.drawing.title)}**: ${markdown(block.drawing.says)}`
    default:
      return block satisfies never
  }
}

function noticeText({ level, head, says, change }: Notice): string {
  const before = head === '' ? '' : ` ${markdown(head)}:`
  return `- **${verdictWord(level)}**${before} ${markdown(says)}${change === '' ? '' : `. To change: ${markdown(change)}`}`
}

function tableText({ caption, columns, rows }: SheetTable): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`
  const lines = [line(columns.map(markdown)), line(columns.map(() => '---')), ...rows.map(row => line(row.map(cellText)))]
  return `**${markdown(caption)}**\n\n${lines.join('\n')}`
}

function cellText(cell: Cell): string {
  const read = readOf(cell)
  if (read === null) return '\\_\\_\\_\\_\\_\\_\\_\\_'
  return read.note === '' ? markdown(read.text) : `${markdown(read.text)} (${markdown(read.note)})`
}

function stepsText(steps: readonly Step[], start: number): string {
  return steps.map((step, i) => stepText(step, start + i)).join('\n')
}

function stepText({ figure, says, caution, blank }: Step, no: number): string {
  return [
    `${no}. [ ] ${figure === null ? '' : `**${markdown(figure.text)}**: `}${markdown(says)}`,
    ...(caution === null ? [] : [`   - Caution: ${markdown(caution)}`]),
    ...(blank === null ? [] : [`   - ${markdown(blank)}: \\_\\_\\_\\_\\_\\_\\_\\_`])
  ].join('\n')
}
