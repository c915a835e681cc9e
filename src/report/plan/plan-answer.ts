import type { Answer, Column, Table } from '../answer.ts'
import { documentOf, findingJson } from '../json.ts'
import type { Figure, Plan, Scrap, Step } from './plan.ts'

/** The document of `--json`: steps and tightest numbers as tables, each number with its unit. */
export function planDocument({ command, title, results, findings, cautions, errors, steps, scraps }: Plan): object {
  const tables = { steps: stepsTable(steps), scraps: scrapsTable(scraps) }
  const answer: Answer = { command, title, inputs: {}, results, tables, findings, cautions, ...(errors.length === 0 ? {} : { errors }) }
  return { ...documentOf(answer), findings: findings.map(finding => findingJson(finding, () => finding.where)) }
}

const column = (key: string): Column => ({ key, name: key, unit: '' })
const FIGURE = ['figure', 'value', 'low', 'high', 'unit']

function stepsTable(steps: readonly Step[]): Table {
  const columns = ['step', 'part', 'thing', ...FIGURE, 'says', 'caution', 'blank', 'source'].map(column)
  const rows = steps.map(({ figure, ...rest }, i) => ({ step: i + 1, ...rest, ...figureRow(figure) }))
  return { name: 'steps', columns, rows }
}

function scrapsTable(scraps: readonly Scrap[]): Table {
  const columns = ['thing', ...FIGURE, 'room', 'room-percent', 'says'].map(column)
  const rows = scraps.map(({ thing, figure, room, roomPercent, says }) => ({
    thing,
    ...figureRow(figure),
    room,
    'room-percent': roomPercent,
    says
  }))
  return { name: 'what scraps the part, tightest first', columns, rows }
}

function figureRow(figure: Figure | null) {
  if (figure === null) return { figure: null, value: null, low: null, high: null, unit: null }
  const { name, value, low, high, unit } = figure
  return { figure: name, value, low, high, unit }
}
