import stringWidth from 'fast-string-width'
import { type Extent, extentOf, type Mark, type Section, type Stuff, stuffAt } from './section.ts'

/** A character is about twice as tall as wide. */
const TALL = 2
const MOST_ROWS = 28
const LEAST_COLUMNS = 18

const GLYPHS: { readonly [S in Stuff]: string } = {
  outside: ' ',
  air: ' ',
  metal: '░',
  drilled: '·',
  thread: '≡',
  engaged: '╪',
  jam: 'X',
  stack: '▓',
  part: '█'
}

const NAMES: { readonly [S in Stuff]?: string } = {
  metal: 'metal',
  drilled: 'drilled out',
  thread: 'full thread',
  engaged: 'threads engaged',
  jam: 'thread of the part with no thread to go into',
  stack: 'under the shoulder',
  part: 'part'
}

/** The section as lines of text, both ways to one scale, with its depths named at the right. No wider than `width`. */
export function sectionText(section: Section, width: number): readonly string[] {
  const extent = extentOf(section)
  const marks = section.marks.toSorted((a, b) => a.depthMm - b.depthMm)
  const label = Math.max(0, ...marks.map(({ text }) => stringWidth(text))) + 3
  // Where the names would leave no room for the drawing they stand below it.
  const beside = width - label >= LEAST_COLUMNS
  const mmPerColumn = scaleOf(extent, Math.max(4, beside ? width - label : width))
  const lines = rowsOf(section, extent, mmPerColumn)
  const drawn = beside ? named(lines, marks, { extent, mmPerColumn }) : [...lines.map(({ text }) => text), ...marks.map(({ text }) => text)]
  return [...drawn, ...legend(lines, width)].map(line => line.trimEnd())
}

/** A round number of columns and rows that fit, one scale for both. */
function scaleOf({ topMm, bottomMm, leftMm, rightMm }: Extent, columns: number): number {
  return Math.max((rightMm - leftMm) / columns, (bottomMm - topMm) / (MOST_ROWS * TALL))
}

interface Row {
  readonly depthMm: number
  readonly text: string
}

function rowsOf(section: Section, { topMm, bottomMm, leftMm, rightMm }: Extent, mmPerColumn: number): readonly Row[] {
  const tallMm = TALL * mmPerColumn
  const columns = Math.floor((rightMm - leftMm) / mmPerColumn + 1e-9)
  return Array.from({ length: Math.ceil((bottomMm - topMm) / tallMm) }, (_, row) => {
    const depthMm = topMm + (row + 0.5) * tallMm
    const cells = Array.from({ length: columns }, (_, i) => GLYPHS[stuffAt(section, leftMm + (i + 0.5) * mmPerColumn, depthMm)])
    return { depthMm, text: cells.join('') }
  })
}

interface Scale {
  readonly extent: Extent
  readonly mmPerColumn: number
}

/** Each name beside the row its depth falls in; one that has none free takes the next below. */
function named(rows: readonly Row[], marks: readonly Mark[], { extent, mmPerColumn }: Scale): readonly string[] {
  const lines = rows.map(({ text }) => text)
  let free = 0
  for (const { depthMm, text } of marks) {
    const own = Math.max(0, Math.floor((depthMm - extent.topMm) / (TALL * mmPerColumn) - 1e-9))
    const at = Math.max(free, own)
    while (lines.length <= at) lines.push(' '.repeat(rows[0]?.text.length ?? 0))
    lines[at] += ` ${at === own ? '─' : ' '} ${text}`
    free = at + 1
  }
  return lines
}

function legend(rows: readonly Row[], width: number): readonly string[] {
  const used = (Object.keys(NAMES) as Stuff[]).filter(stuff => rows.some(({ text }) => text.includes(GLYPHS[stuff])))
  const words = used.map(stuff => `${GLYPHS[stuff]} ${NAMES[stuff]}`)
  return words.reduce<string[]>((lines, word) => {
    const last = lines.at(-1)
    if (last === undefined || stringWidth(`${last}   ${word}`) > width) lines.push(word)
    else lines[lines.length - 1] = `${last}   ${word}`
    return lines
  }, [])
}
