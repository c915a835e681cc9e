import { Chalk, type ChalkInstance } from 'chalk'
import { wrapAnsi } from 'fast-wrap-ansi'
import { visible } from '../quantity/quoted.ts'
import type { Units } from '../quantity/unit-system.ts'
import type { Answer, AnswerInput, Result, Table } from './answer.ts'
import { columnsText } from './columns.ts'
import { sectionText } from './drawing/section-text.ts'
import { timeCurrentText } from './drawing/time-current-text.ts'
import { cellText, spreadText, valueText } from './figures.ts'
import { verdictLines } from './findings-text.ts'
import { inchFirst } from './inch-first.ts'
import { plotText } from './plot-text.ts'
import { quietly } from './quiet.ts'
import { workingText } from './working-text.ts'

export interface Page {
  readonly columns: number
  readonly colour: boolean
  readonly units?: Units
  readonly quiet?: boolean
}

/** An answer for the eye. Colour never says what the words do not. */
export function pageOf(whole: Answer, { columns, colour, units = 'metric', quiet = false }: Page): string {
  const wanted = quiet ? quietly(whole) : whole
  const answer = units === 'inch' ? inchFirst(wanted) : wanted
  const ink = new Chalk({ level: colour ? 1 : 0 })
  const parts = [
    wrapAnsi(`${ink.bold(answer.command)}  ${visible(answer.title)}`, columns),
    answer.first === undefined ? '' : wrapAnsi(ink.bold(answer.first), columns),
    resultsText(
      answer.results.filter(({ hidden }) => hidden !== true),
      columns
    ),
    answer.drawing === undefined ? '' : sectionText(answer.drawing, columns).join('\n'),
    answer.curves === undefined ? '' : `${ink.bold(answer.curves.title)}\n${timeCurrentText(answer.curves, columns).join('\n')}`,
    ...Object.values(answer.tables).map(table => tableText(table, columns, ink)),
    assumedText(answer.inputs, columns),
    workingText(answer.working ?? [], columns, ink),
    verdictLines(answer.findings, columns, ink),
    cautionsText(answer.cautions, columns, ink)
  ]
  return `${parts.filter(part => part !== '').join('\n\n')}\n`
}

/** The spread stands in a column of its own only where something spreads; the root sum of squares only where there is room. */
function resultsText(results: readonly Result[], width: number): string {
  if (results.length === 0) return ''
  const spreads = results.some(({ low }) => low !== null)
  const roomy = spreads && width >= 100
  const columns = [
    { heading: 'what', gives: true },
    { heading: '', right: false },
    { heading: 'value', right: true, gives: results.some(({ value }) => typeof value === 'string') },
    ...(spreads ? [{ heading: 'worst case', right: true, gives: width < 60 }] : []),
    ...(roomy ? [{ heading: 'root sum of squares', right: true }] : [])
  ]
  const rows = results.map(result => [
    result.name,
    result.symbol,
    valueText(result),
    ...(spreads ? [spreadText(result, result)] : []),
    ...(roomy ? [result.rss === null ? '' : spreadText({ low: result.rss[0], high: result.rss[1] }, result)] : [])
  ])
  return columnsText(columns, rows, width)
}

function tableText({ name, columns, rows: all, plot, most = all.length }: Table, width: number, ink: ChalkInstance): string {
  if (plot !== undefined) return `${ink.bold(name)}\n${plotText({ columns, rows: all, plot }, width)}`
  const rows = all.slice(0, most)
  const headings = columns.map(column => ({
    heading: column.unit === '' ? column.name : `${column.name}, ${column.unit}`,
    right: rows.some(row => typeof row[column.key] === 'number'),
    gives: true
  }))
  const cells = rows.map(row => columns.map(column => cellText(row, column)))
  const more = all.length > most ? `\n… and ${all.length - most} more` : ''
  return `${wrapAnsi(ink.bold(name), width)}\n${columnsText(headings, cells, width)}${more}`
}

/** What nobody gave and was taken all the same; the same of several fields is told once. */
function assumedText(inputs: { readonly [name: string]: AnswerInput }, width: number): string {
  const assumed = Object.entries(inputs).filter(([, { assumed }]) => assumed !== null)
  if (assumed.length === 0) return ''
  const said = assumed.map(([name, { text, assumed: why }]) => ({
    name,
    what: `${text}${why === 'default' ? '' : ` (${why?.replace(/^default: /, '')})`}`
  }))
  const lines = [...new Set(said.map(({ what }) => what))].map(what => {
    const names = said.filter(one => one.what === what).map(({ name }) => name)
    return `${names.join(', ')} ${what}`
  })
  return wrapAnsi(`assumed: ${lines.join('; ')}`, width)
}

function cautionsText(cautions: readonly string[], width: number, ink: ChalkInstance): string {
  return cautions.map(caution => wrapAnsi(`${ink.yellow('note')}  ${caution}`, width)).join('\n')
}
