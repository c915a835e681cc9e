import { along, currentsOf, decadesOf, type LogAxis, TIMES, type TimeCurrent } from './time-current.ts'

const [WIDE, TALL] = [560, 360]
const [LEFT, TOP, RIGHT, BELOW] = [64, 12, 16, 40]

/** The same as SVG, with its title and its words for whoever does not see it. Lines differ by their dashes as well as by their tone. */
export function timeCurrentSvg(drawing: TimeCurrent, { id = 'time-current' }: { readonly id?: string } = {}): string {
  const currents = currentsOf(drawing)
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="${id}-title ${id}-says" viewBox="0 0 ${LEFT + WIDE + RIGHT} ${TOP + TALL + BELOW}" font-family="sans-serif" font-size="13">`,
    `<title id="${id}-title">${escaped(drawing.title)}</title>`,
    `<desc id="${id}-says">${escaped(drawing.says)}</desc>`,
    ...grid(currents),
    band(drawing, currents),
    wire(drawing, currents),
    ...marks(drawing, currents),
    '</svg>'
  ].join('\n')
}

function xOf(currents: LogAxis, currentA: number): number {
  return Math.round(10 * (LEFT + WIDE * along(currents, currentA))) / 10
}

function yOf(timeS: number | null): number {
  return Math.round(10 * (TOP + TALL * (1 - along(TIMES, timeS ?? TIMES.most)))) / 10
}

function grid(currents: LogAxis): readonly string[] {
  const line = (x1: number, y1: number, x2: number, y2: number) => `<line x1="${x1}" y1="${y1}" x2="${x2}" y2="${y2}" stroke="#bbb"/>`
  return [
    `<rect x="${LEFT}" y="${TOP}" width="${WIDE}" height="${TALL}" fill="#fff" stroke="#000"/>`,
    ...decadesOf(TIMES).flatMap(timeS => [
      line(LEFT, yOf(timeS), LEFT + WIDE, yOf(timeS)),
      `<text x="${LEFT - 6}" y="${yOf(timeS) + 4}" text-anchor="end">${timeS} s</text>`
    ]),
    ...decadesOf(currents).flatMap(currentA => [
      line(xOf(currents, currentA), TOP, xOf(currents, currentA), TOP + TALL),
      `<text x="${xOf(currents, currentA)}" y="${TOP + TALL + 18}" text-anchor="middle">${currentA} A</text>`
    ])
  ]
}

function band({ band: points }: TimeCurrent, currents: LogAxis): string {
  const slow = points.map(({ currentA, longestS }) => `${xOf(currents, currentA)},${yOf(longestS)}`)
  const quick = points.toReversed().map(({ currentA, shortestS }) => `${xOf(currents, currentA)},${yOf(shortestS ?? TIMES.least)}`)
  return points.length === 0
    ? ''
    : `<polygon class="band" points="${[...slow, ...quick].join(' ')}" fill="#ccc" fill-opacity="0.7" stroke="#000"/>`
}

/** From where the wire no longer stands a current for good. */
function wire({ wire: points }: TimeCurrent, currents: LogAxis): string {
  const drawn = points.flatMap(({ currentA, timeS }) => (timeS === null ? [] : [`${xOf(currents, currentA)},${yOf(timeS)}`]))
  return drawn.length === 0 ? '' : `<polyline class="wire" points="${drawn.join(' ')}" fill="none" stroke="#000" stroke-width="3"/>`
}

function marks({ marks: all }: TimeCurrent, currents: LogAxis): readonly string[] {
  return all.map(({ name, currentA, timeS }, i) => {
    const x = xOf(currents, currentA)
    const drawn =
      timeS === null
        ? `<line x1="${x}" y1="${TOP}" x2="${x}" y2="${TOP + TALL}" stroke="#000" stroke-width="2" stroke-dasharray="6 4"/>`
        : `<circle cx="${x}" cy="${yOf(timeS)}" r="5" fill="#000"/>`
    const right = x < LEFT + WIDE / 2
    const y = timeS === null ? TOP + TALL - 8 - 16 * i : yOf(timeS) - 8
    return `<g class="mark">${drawn}<text x="${right ? x + 6 : x - 6}" y="${y}" text-anchor="${right ? 'start' : 'end'}">${escaped(name)}</text></g>`
  })
}

const MEANT: { readonly [sign: string]: string } = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }

/** Text as text, whatever stands in it; what a page may not hold is left out. */
function escaped(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}]/gu, ' ').replace(/[&<>"']/g, sign => MEANT[sign]!)
}
