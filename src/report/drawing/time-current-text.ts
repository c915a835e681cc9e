import { along, decadesOf } from './axis.ts'
import { currentsOf, type LogAxis, TIMES, type TimeCurrent } from './time-current.ts'

const ROWS_A_DECADE = 3
const ROWS = 6 * ROWS_A_DECADE + 1
const [WIDEST, NARROWEST] = [72, 20]
const GUTTER = 'xxxxx s '.length
const [BAND, WIRE, STEADY, POINT] = ['░', '•', '┊', '◆']

/** The band of a protector, its wire and its load in characters, no wider than `width` where that can be read. */
export function timeCurrentText(drawing: TimeCurrent, width: number): readonly string[] {
  const columns = Math.min(WIDEST, Math.max(NARROWEST, width - GUTTER - 1))
  const currents = currentsOf(drawing)
  const cells = Array.from({ length: ROWS }, () => Array<string>(columns).fill(' '))
  const put = (row: number, column: number, glyph: string) => {
    if (row >= 0 && row < ROWS) cells[row]![column] = glyph
  }
  for (let column = 0; column < columns; column++) {
    const at = nearest(drawing.band, column, { currents, columns })
    if (at !== undefined && (at.shortestS ?? 0) < TIMES.most)
      for (let row = rowOf(at.longestS ?? TIMES.most); row <= rowOf(at.shortestS ?? TIMES.least); row++) put(row, column, BAND)
    const stands = nearest(drawing.wire, column, { currents, columns })?.timeS
    if (stands !== undefined && stands !== null && stands <= TIMES.most) put(rowOf(stands), column, WIRE)
  }
  for (const { currentA, timeS } of drawing.marks) {
    const column = columnOf(currentA, { currents, columns })
    if (timeS === null) for (let row = 0; row < ROWS; row++) put(row, column, STEADY)
    else put(rowOf(timeS), column, POINT)
  }
  return [...cells.map((row, i) => `${labelOf(i)}${row.join('').trimEnd()}`), ...axis(currents, columns), ...legend(drawing, width)]
}

interface Across {
  readonly currents: LogAxis
  readonly columns: number
}

function columnOf(currentA: number, { currents, columns }: Across): number {
  return Math.round(along(currents, currentA) * (columns - 1))
}

function rowOf(timeS: number): number {
  return Math.round((1 - along(TIMES, timeS)) * (ROWS - 1))
}

/** The point drawn in a column: the one that stands nearest to it. */
function nearest<P extends { readonly currentA: number }>(points: readonly P[], column: number, across: Across): P | undefined {
  const away = ({ currentA }: P) => Math.abs(along(across.currents, currentA) * (across.columns - 1) - column)
  return points.length === 0 ? undefined : points.reduce((a, b) => (away(b) < away(a) ? b : a))
}

function labelOf(row: number): string {
  if (row % ROWS_A_DECADE !== 0) return `${' '.repeat(GUTTER)}│`
  return `${String(10 ** (4 - row / ROWS_A_DECADE)).padStart(GUTTER - 3)} s ┤`
}

function axis(currents: LogAxis, columns: number): readonly string[] {
  const [line, names] = [Array<string>(columns).fill('─'), Array<string>(columns).fill(' ')]
  for (const currentA of decadesOf(currents)) {
    const text = `${currentA} A`
    const at = columnOf(currentA, { currents, columns })
    line[at] = '┴'
    const from = Math.min(at, columns - text.length)
    for (let i = 0; i < text.length; i++) names[from + i] = text[i]!
  }
  return [`${' '.repeat(GUTTER)}└${line.join('')}`, `${' '.repeat(GUTTER + 1)}${names.join('').trimEnd()}`]
}

function legend({ wire, marks }: TimeCurrent, width: number): readonly string[] {
  const words = [
    `${BAND} the band in which it opens`,
    ...(wire.length === 0 ? [] : [`${WIRE} the wire stands it so long`]),
    ...marks.map(({ name, timeS }) => `${timeS === null ? STEADY : POINT} ${name}`)
  ]
  return words.reduce<string[]>((lines, word) => {
    const last = lines.at(-1)
    if (last === undefined || last.length + word.length + 3 > width) lines.push(word)
    else lines[lines.length - 1] = `${last}   ${word}`
    return lines
  }, [])
}
