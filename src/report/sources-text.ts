import { wrapAnsi } from 'fast-wrap-ansi'
import type { Source } from '../formula/source.ts'

/** A source and what would fall with it. */
export interface Rests {
  readonly source: Source
  readonly formulas: readonly string[]
  readonly rules: readonly string[]
  /** Files of the program with figures of it, where they are more than its formulas and rules. */
  readonly files: readonly string[]
}

/** One block a source; last, how many there are of each label. */
export function sourcesText(rests: readonly Rests[], width: number): string {
  const counts = new Map<string, number>()
  for (const { source } of rests) counts.set(source.label, (counts.get(source.label) ?? 0) + 1)
  const sum = [...counts].map(([label, count]) => `${count} ${label}`).join(', ')
  const all = rests.length === 1 ? '1 source' : `${rests.length} sources`
  return `${[...rests.map(one => blockText(one, width)), `${all}: ${sum}`].join('\n\n')}\n`
}

function blockText({ source: { id, title, label }, formulas, rules, files }: Rests, width: number): string {
  const lines = [
    line('', title),
    line('label', label),
    line('formulas', formulas.join(', ')),
    line('rules', rules.join(', ')),
    line('named in', files.join(', '))
  ]
  return [id, ...lines.filter(text => text !== '').map(text => hanging(text, width))].join('\n')
}

function line(word: string, text: string): string {
  return text === '' ? '' : `${word.padEnd(INDENT - 2)}${text}`
}

const INDENT = 12

function hanging(text: string, width: number): string {
  const wrapped = wrapAnsi(text.slice(INDENT - 2), Math.max(20, width - INDENT)).split('\n')
  return wrapped.map((part, i) => `  ${(i === 0 ? text.slice(0, INDENT - 2) : '').padEnd(INDENT - 2)}${part}`).join('\n')
}
