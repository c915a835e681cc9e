import type { Units } from '../quantity/unit-system.ts'
import type { Table } from '../report/answer.ts'
import { spreadText, valueText } from '../report/figures.ts'
import { verdictWord } from '../report/findings-text.ts'
import { inInches } from '../report/inch-first.ts'
import type { Swept, SweptLine } from '../report/swept.ts'

type Column = Table['columns'][number]

interface Page {
  /** What is varied, in short. */
  readonly field: string
  readonly columns: number
  readonly plot: string | null
  readonly units: Units
}

/** For the eye: verdicts first, then the results of one place beside each other as far as the page goes, then the drawing. */
export function sweepTables(whole: Swept, { field, columns, plot, units }: Page): { readonly [name: string]: Table } {
  const model = units === 'inch' ? { ...whole, results: whole.results.map(inchLine) } : whole
  const value = { key: 'value', name: field, unit: model.unit, shown: model.shown }
  const room = columns - widthOf(`${field}, ${model.unit}`)
  const tables = places(model.results).flatMap(([place, lines]) =>
    packed(lines, room).map(some => resultTable(`${place}${place === '' ? 'results' : ''} (worst case in brackets)`, some, model, value))
  )
  const drawn = whole.results.find(({ id }) => id === plot)
  return {
    verdicts: verdictTable(model, value),
    ...Object.fromEntries(tables.map((table, i) => [`results ${i + 1}`, table])),
    ...(drawn === undefined ? {} : { plot: plotTable(drawn, model, value) })
  }
}

function verdictTable({ points }: Swept, value: Column): Table {
  return {
    name: 'verdicts',
    columns: [value, { key: 'verdict', name: 'verdict', unit: '' }, { key: 'fails', name: 'what fails', unit: '' }],
    rows: points.map(({ value: at, verdict, fails }) => ({ value: at, verdict: verdict === null ? 'NONE' : verdictWord(verdict), fails }))
  }
}

/** Results by what stands before the colon of their id: `holes.left`. */
function places(lines: readonly SweptLine[]): readonly (readonly [place: string, lines: readonly SweptLine[]])[] {
  const names = new Set(lines.map(placeOf))
  return [...names].map(place => [place, lines.filter(line => placeOf(line) === place)])
}

function placeOf({ id }: SweptLine): string {
  return id.slice(0, Math.max(0, id.lastIndexOf(':')))
}

function inchLine(line: SweptLine): SweptLine {
  const at = line.at.map(figure => inInches({ ...line, ...figure }))
  return { ...line, unit: at[0]?.unit ?? line.unit, shown: at[0]?.shown ?? line.shown, at }
}

function shortId({ id }: SweptLine): string {
  return id.slice(id.lastIndexOf(':') + 1)
}

/** As many side by side as there is room for. */
function packed(lines: readonly SweptLine[], room: number): readonly (readonly SweptLine[])[] {
  const groups: SweptLine[][] = []
  let left = 0
  for (const line of lines) {
    const width = Math.max(widthOf(shortId(line)), ...line.at.map((_, i) => widthOf(figureText(line, i))))
    if (groups.length === 0 || width > left) {
      groups.push([])
      left = room
    }
    groups.at(-1)!.push(line)
    left -= width
  }
  return groups
}

/** With the gap to the next column. */
function widthOf(text: string): number {
  return [...text].length + 2
}

function resultTable(name: string, lines: readonly SweptLine[], { points }: Swept, value: Column): Table {
  return {
    name,
    columns: [value, ...lines.map(line => ({ key: line.id, name: shortId(line), unit: '' }))],
    rows: points.map((point, i) => ({ value: point.value, ...Object.fromEntries(lines.map(line => [line.id, figureText(line, i)])) }))
  }
}

function figureText({ unit, shown, at }: SweptLine, i: number): string {
  const figure = { ...at[i]!, unit, shown }
  const spread = spreadText(figure, { unit: '', shown })
  return spread === '' ? valueText(figure) : `${valueText(figure)} (${spread})`
}

function plotTable({ name, id, unit, shown, at }: SweptLine, { points, field }: Swept, value: Column): Table {
  const rows = points.flatMap((point, i) => (typeof at[i]?.value === 'number' ? [{ value: point.value, result: at[i].value }] : []))
  return {
    name: `${name}${unit === '' ? '' : `, ${unit}`}, over ${field}`,
    columns: [value, { key: 'result', name: id, unit, shown }],
    rows,
    plot: { x: 'value', y: 'result', levels: [] }
  }
}
