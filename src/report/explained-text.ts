import { wrapAnsi } from 'fast-wrap-ansi'
import type { Facts } from '../formula/formula.ts'
import type { Source } from '../formula/source.ts'
import { unitOf, wordsOf } from '../quantity/units.ts'
import { askedBy } from '../rules/list.ts'
import type { Rule } from '../rules/rule.ts'
import { columnsText } from './columns.ts'

/** A result as the program prints it, and the formula that gives it, where it is one. */
export interface ExplainedResult {
  readonly id: string
  readonly name: string
  readonly symbol: string
  readonly unit: string
  readonly source: Source
  readonly formula?: Facts
}

export type Explained =
  | { readonly rule: Omit<Rule<never>, 'judge'> }
  | { readonly formula: Facts }
  | { readonly source: Source }
  | { readonly results: readonly ExplainedResult[] }

/** One rule, formula, source or result in full. */
export function explainedText(found: Explained, width: number): string {
  if ('rule' in found) return ruleText(found.rule, width)
  if ('results' in found) return found.results.map(one => resultText(one, width)).join('\n')
  return 'formula' in found ? formulaText(found.formula, width) : `${sourceText(found.source)}\n`
}

function ruleText({ id, question, why, change, source }: Omit<Rule<never>, 'judge'>, width: number): string {
  const lines = [id, '', `question  ${question}`, `why       ${why}`, `change    ${change}`, `source    ${sourceText(source)}`]
  const asker = askedBy(id)
  if (asker !== undefined) lines.splice(3, 0, `asked by  ${asker} alone, of no job that is checked`)
  return `${lines.map(line => hanging(line, width)).join('\n')}\n`
}

function formulaText({ gives, says, symbol, equation, inputs, source }: Facts, width: number): string {
  const rows = Object.entries(inputs).map(([name, [letter, least, greatest]]) => [
    letter,
    wordsOf(name),
    unitOf(name),
    `${least} to ${greatest}`
  ])
  const table = columnsText(
    [{ heading: 'letter' }, { heading: 'what', gives: true }, { heading: 'unit' }, { heading: 'good for' }],
    rows,
    width
  )
  return [
    hanging(`${gives}  ${says}`, width),
    `${symbol} = ${equation}   ${unitOf(gives)}`,
    table,
    `${hanging(`source    ${sourceText(source)}`, width)}\n`
  ].join('\n\n')
}

function resultText({ id, name, symbol, unit, source, formula }: ExplainedResult, width: number): string {
  const unitText = unit === '' ? '' : `, in ${unit}`
  const head = hanging(`result    ${id}: ${name} (${symbol}${unitText})`, width)
  return `${head}\n${formula === undefined ? `${hanging(`source    ${sourceText(source)}`, width)}\n` : `\n${formulaText(formula, width)}`}`
}

function sourceText({ id, title, label }: Source): string {
  return `${title} (${label}) [${id}]`
}

function hanging(line: string, width: number): string {
  return wrapAnsi(line, Math.max(20, width - 10)).replaceAll('\n', `\n${' '.repeat(10)}`)
}
