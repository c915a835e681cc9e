import { showNumber } from '../quantity/show.ts'
import type { Plot, Table } from './answer.ts'

const [HEIGHT, WIDEST, NARROWEST] = [12, 64, 16]
const [POINT, LEVEL] = ['•', '╌']

type Plotted = Pick<Table, 'columns' | 'rows'> & { readonly plot: Plot }

/** A curve of characters: rows at even steps along the first axis. Levels are drawn across and named. */
export function plotText({ columns, rows, plot }: Plotted, width: number): string {
  const ys = rows.map(row => Number(row[plot.y]))
  const all = [...ys, ...plot.levels.map(({ value }) => value)]
  const [low, high] = [Math.min(...all), Math.max(...all)]
  const lineOf = (y: number) => Math.round(((HEIGHT - 1) * (high - y)) / (high - low || 1))
  const shown = columns.find(({ key }) => key === plot.y)?.shown ?? 'plain'
  const labels = new Map([high, low].map(y => [lineOf(y), showNumber(y, shown)]))
  const gutter = Math.max(...[...labels.values()].map(label => label.length))
  const across = Math.min(WIDEST, Math.max(NARROWEST, width - gutter - 2))
  const lines = Array.from({ length: HEIGHT }, (_, line) => {
    const names = plot.levels.flatMap(({ name, value }) => (lineOf(value) === line ? [`${name} ${showNumber(value, shown)}`] : []))
    const met = Array.from({ length: across }, (_, i) => lineOf(ys[nearestRow(i, across, ys.length)]!) === line)
    const cells = [...backOf(names.join(', '), met)].map((cell, i) => (met[i] ? POINT : cell))
    return `${(labels.get(line) ?? '').padStart(gutter)} ${labels.has(line) ? '┤' : '│'}${cells.join('').trimEnd()}`
  })
  return [...lines, ...axis({ columns, rows, plot }, gutter, across)].join('\n')
}

/** What the curve is drawn over: nothing, or a level with its name on the side that the curve leaves free. */
function backOf(name: string, met: readonly boolean[]): string {
  if (name === '') return ' '.repeat(met.length)
  const [left, right] = [`${LEVEL} ${name} `, ` ${name} ${LEVEL}`]
  const taken = met.slice(0, left.length).some(Boolean)
  return (taken ? right.padStart(met.length, LEVEL) : left.padEnd(met.length, LEVEL)).slice(0, met.length)
}

function nearestRow(cell: number, across: number, count: number): number {
  return Math.round((cell * (count - 1)) / (across - 1))
}

/** The axis below, with its two ends. */
function axis({ columns, rows, plot }: Plotted, gutter: number, across: number): readonly string[] {
  const column = columns.find(({ key }) => key === plot.x)
  const [from, to] = [rows[0], rows.at(-1)].map(row => showNumber(Number(row?.[plot.x] ?? 0), column?.shown ?? 'plain')) as [string, string]
  const end = `${to} ${column?.unit ?? ''}`.trim()
  const margin = ' '.repeat(gutter + 2)
  return [
    `${' '.repeat(gutter + 1)}└${'─'.repeat(across)}`,
    `${margin}${from}${end.padStart(Math.max(end.length + 1, across - from.length))}`
  ]
}
