import CliTable from 'cli-table3'
import stringWidth from 'fast-string-width'

/** A column of text: its heading, whether it is set flush right, whether it gives way when the page is narrow. */
export interface TextColumn {
  readonly heading: string
  readonly right?: boolean
  readonly gives?: boolean
}

const GAP = 2
/** A column wider than this holds sentences, and gives way to no less than that. */
const SENTENCE = 30
const NARROWEST = 14
const NOTHING = Object.fromEntries(
  [
    'top',
    'top-mid',
    'top-left',
    'top-right',
    'bottom',
    'bottom-mid',
    'bottom-left',
    'bottom-right',
    'left',
    'left-mid',
    'right',
    'right-mid',
    'mid',
    'mid-mid',
    'middle'
  ].map(name => [name, ''])
)

/** Columns of text that fit the page: those that give way are wrapped. */
export function columnsText(columns: readonly TextColumn[], rows: readonly (readonly string[])[], width: number): string {
  const widths = fitted(columns, rows, width)
  const table = new CliTable({
    chars: NOTHING,
    colWidths: widths,
    wordWrap: true,
    wrapOnWordBoundary: true,
    colAligns: columns.map(({ right }) => (right ? 'right' : 'left')),
    style: { 'padding-left': 0, 'padding-right': GAP, head: [], border: [], compact: true }
  })
  const headings = columns.some(({ heading }) => heading !== '')
    ? [columns.map(({ heading }) => heading), widths.map(w => '─'.repeat(w - GAP))]
    : []
  table.push(...[...headings, ...rows].map(cells => [...cells]))
  return table
    .toString()
    .split('\n')
    .map(line => line.trimEnd())
    .join('\n')
}

function fitted(columns: readonly TextColumn[], rows: readonly (readonly string[])[], width: number): number[] {
  const natural = columns.map(({ heading }, i) => Math.max(stringWidth(heading), ...rows.map(row => stringWidth(row[i] ?? ''))) + GAP)
  const givers = columns.flatMap(({ gives }, i) => (gives ? [i] : []))
  let over = natural.reduce((a, b) => a + b, 0) - GAP - width
  for (const i of givers.sort((a, b) => natural[b]! - natural[a]!)) {
    const cells = [columns[i]!.heading, ...rows.map(row => row[i] ?? '')]
    const less = Math.max(0, Math.min(over, natural[i]! - narrowest(cells, natural[i]!)))
    natural[i]! -= less
    over -= less
  }
  return natural
}

/** No word is broken, and a column of sentences stays readable. */
function narrowest(cells: readonly string[], natural: number): number {
  const longest = Math.max(...cells.flatMap(text => text.split(' ')).map(word => stringWidth(word)))
  return GAP + Math.max(longest, natural > SENTENCE ? NARROWEST : 0)
}
