import type { Draw } from './random.ts'

/** What no number of this trade is, what looks like one, and what upsets readers of text. */
export const NASTY = [
  '0',
  '-0',
  '-1',
  '1e308',
  '1e309',
  '-1e309',
  '1e-320',
  '9007199254740993',
  '0x10',
  '0o7',
  '1_000',
  '1,5',
  '١٢',
  '½',
  '.nan',
  '.inf',
  '-.inf',
  '~',
  'null',
  'true',
  'yes',
  '""',
  "''",
  '[]',
  '{}',
  '[[]]',
  '{ a: { b: c } }',
  '± 1',
  '1 ± -1',
  '5..1',
  '..',
  '1..',
  '1:0',
  '0:0',
  '100 %',
  '-300 °C',
  '0 mm',
  '0 V',
  '0 ohm',
  '1e300 mm',
  '1e-300 A',
  '*a',
  '&a 1',
  '!!binary aGk=',
  '!x y',
  '|',
  '>-',
  '%',
  '@',
  '`',
  '__proto__',
  'constructor',
  'toString',
  '\u0000',
  '\u001b[2J',
  '\u202e',
  '\ufeff',
  '\u2028',
  '\ud83d\ude00',
  '\ud800',
  'a'.repeat(5000),
  '9'.repeat(400),
  '('.repeat(300),
  '- '.repeat(60)
] as const

const NUMBER = /\d+(?:\.\d+)?/g
const LETTERS = ' \t\n:,-#[]{}"\'&*!|>%@`?.0123456789±eEmMµ°Ωé\u00a0\u2212'

type Way = (text: string, draw: Draw) => string

/** Changes at one place of a text. */
const ANYWHERE: readonly Way[] = [
  (text, draw) => replaced(text, draw.below(text.length + 1), 0, LETTERS[draw.below(LETTERS.length)]!),
  (text, draw) => replaced(text, draw.below(text.length + 1), 1 + draw.below(3), ''),
  (text, draw) => replaced(text, draw.below(text.length + 1), 0, draw.oneOf(NASTY)),
  (text, draw) => atNumber(text, draw, () => draw.oneOf(NASTY)),
  (text, draw) => atNumber(text, draw, number => scaled(number, 10 ** (draw.below(13) - 6))),
  (text, draw) => atNumber(text, draw, number => `-${number}`),
  (text, draw) => atNumber(text, draw, number => `${number} ± ${draw.below(200)} %`)
]

/** Changes of whole lines. */
const OF_LINES: readonly Way[] = [
  (text, draw) => byLines(text, lines => lines.toSpliced(draw.below(lines.length), 1 + draw.below(3))),
  (text, draw) => byLines(text, lines => lines.toSpliced(draw.below(lines.length), 0, draw.oneOf(lines))),
  (text, draw) => atLine(text, draw, line => `${' '.repeat(draw.below(4))}${line}`),
  (text, draw) => atLine(text, draw, line => line.replace(/^ {1,2}/, '')),
  (text, draw) => atLine(text, draw, line => line.replace(/:.*$/, `: ${draw.oneOf(NASTY)}`)),
  (text, draw) => atLine(text, draw, line => line.replace(/[\w-]+(?=:)/, draw.oneOf(wordsOf(text)))),
  (text, draw) => atLine(text, draw, line => line.replace(/: \S.*$/, `: ${draw.oneOf(valuesOf(text))}`))
]

/** A number of many digits has no end when it is grown: then it stays. */
function scaled(number: string, by: number): string {
  const grown = Number(number) * by
  return Number.isFinite(grown) ? String(grown) : number
}

/** Another size: mostly it can still be read, and asks the formulas. */
const sized: Way = (text, draw) => atNumber(text, draw, number => scaled(number, 0.2 + draw.below(4000) / 1000))

/** Up to four changes, half of the texts in sizes alone; what is one line has no lines to be changed. */
export function mutatedText(text: string, draw: Draw): string {
  const others = text.includes('\n') ? [...ANYWHERE, ...OF_LINES] : ANYWHERE
  const ways = draw.below(2) === 0 ? [sized] : [sized, ...others]
  let changed = text
  for (let left = 1 + draw.below(4); left > 0; left--) changed = draw.oneOf(ways)(changed, draw)
  return changed
}

function replaced(text: string, at: number, length: number, by: string): string {
  return text.slice(0, at) + by + text.slice(at + length)
}

function atNumber(text: string, draw: Draw, change: (number: string) => string): string {
  const found = [...text.matchAll(NUMBER)]
  if (found.length === 0) return text
  const { index, 0: number } = draw.oneOf(found)
  return replaced(text, index, number.length, change(number))
}

function byLines(text: string, change: (lines: readonly string[]) => readonly string[]): string {
  return change(text.split('\n')).join('\n')
}

function atLine(text: string, draw: Draw, change: (line: string) => string): string {
  return byLines(text, lines => lines.with(draw.below(lines.length), change(draw.oneOf(lines))))
}

function wordsOf(text: string): readonly string[] {
  return text.match(/[\w-]+(?=:)/g) ?? ['a']
}

function valuesOf(text: string): readonly string[] {
  return text.match(/(?<=: )\S.*$/gm) ?? ['a']
}
