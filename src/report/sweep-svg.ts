import { showNumber } from '../quantity/show.ts'
import { verdictWord } from './findings-text.ts'
import type { Swept, SweptLine } from './swept.ts'
import { type Element, xmlText } from './xml.ts'

const [WIDTH, PANEL, LEFT, RIGHT, TOP, BOTTOM] = [720, 190, 90, 20, 34, 26]
const STRIP = 40

/** A sweep as a drawing of its own: a panel a result, the band between its worst ends, the verdict at every point in words. */
export function sweepSvg(swept: Swept): string {
  const lines = swept.results.filter(({ at }) => at.some(({ value }) => typeof value === 'number'))
  const height = lines.length * PANEL + STRIP + 30
  const root: Element = {
    name: 'svg',
    attributes: {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${WIDTH} ${height}`,
      width: WIDTH,
      height,
      'font-family': 'sans-serif',
      'font-size': 12
    },
    inside: [
      { name: 'title', inside: [`${swept.field} from ${swept.points[0]?.value} to ${swept.points.at(-1)?.value} ${swept.unit}`] },
      ...lines.map((line, i) => panel(swept, line, i * PANEL)),
      verdicts(swept, lines.length * PANEL)
    ]
  }
  return `${xmlText(root)}\n`
}

function panel(swept: Swept, line: SweptLine, down: number): Element {
  const y = scaleOf(line)
  const x = acrossOf(swept)
  const points = line.at.flatMap(({ value, low, high }, i) =>
    typeof value === 'number' ? [{ x: x(i), value: y(value), low: y(low ?? value), high: y(high ?? value) }] : []
  )
  const band = [...points.map(p => `${fix(p.x)},${fix(p.low)}`), ...[...points].reverse().map(p => `${fix(p.x)},${fix(p.high)}`)].join(' ')
  const [from, to] = endsOf(line)
  return {
    name: 'g',
    attributes: { transform: `translate(0 ${down})` },
    inside: [
      text(`${line.name} (${line.id})${line.unit === '' ? '' : `, ${line.unit}`}`, LEFT, 20, { 'font-weight': 'bold' }),
      ...[from, to].flatMap(value => [
        rule(LEFT, y(value), WIDTH - RIGHT, y(value)),
        text(showNumber(value, line.shown), LEFT - 6, y(value) + 4, { 'text-anchor': 'end' })
      ]),
      { name: 'polygon', attributes: { points: band, fill: '#ccc', stroke: 'none' } },
      { name: 'polyline', attributes: { points: points.map(p => `${fix(p.x)},${fix(p.value)}`).join(' '), fill: 'none', stroke: '#000' } }
    ]
  }
}

/** The axis of the field, with the verdict under each point where there is room, else at every so many. */
function verdicts(swept: Swept, down: number): Element {
  const x = acrossOf(swept)
  const every = Math.ceil(swept.points.length / 8)
  const marks = swept.points.flatMap(({ value, verdict }, i) =>
    i % every === 0
      ? [
          text(showNumber(value, swept.shown), x(i), 16, { 'text-anchor': 'middle' }),
          text(verdict === null ? 'NONE' : verdictWord(verdict), x(i), 32, { 'text-anchor': 'middle', 'font-size': 9 })
        ]
      : []
  )
  const name = text(`${swept.field}, ${swept.unit}`, LEFT, 56, {})
  return { name: 'g', attributes: { transform: `translate(0 ${down})` }, inside: [rule(LEFT, 0, WIDTH - RIGHT, 0), ...marks, name] }
}

function acrossOf({ points }: Swept): (i: number) => number {
  return i => LEFT + ((WIDTH - LEFT - RIGHT) * i) / Math.max(1, points.length - 1)
}

function endsOf({ at }: SweptLine): readonly [number, number] {
  const all = at.flatMap(({ value, low, high }) => [value, low, high].filter(one => typeof one === 'number'))
  return [Math.min(...all), Math.max(...all)]
}

function scaleOf(line: SweptLine): (value: number) => number {
  const [low, high] = endsOf(line)
  return value => (high === low ? PANEL / 2 : TOP + ((PANEL - TOP - BOTTOM) * (high - value)) / (high - low))
}

function rule(x1: number, y1: number, x2: number, y2: number): Element {
  return { name: 'line', attributes: { x1: fix(x1), y1: fix(y1), x2: fix(x2), y2: fix(y2), stroke: '#999' } }
}

function text(words: string, x: number, y: number, more: { readonly [name: string]: string | number }): Element {
  return { name: 'text', attributes: { x: fix(x), y: fix(y), ...more }, inside: [words] }
}

function fix(number: number): string {
  return number.toFixed(1)
}
