import type { ChalkInstance } from 'chalk'
import { wrapAnsi } from 'fast-wrap-ansi'
import type { Finding, Verdict } from '../rules/finding.ts'

const WORDS: { readonly [V in Verdict]: string } = { pass: 'PASS', caution: 'CAUTION', fail: 'FAIL', 'not-judged': 'NOT JUDGED' }
const INDENT = 12

/** One block a finding: the verdict as a word, the rule, what it says, what to change unless it passed. */
export function verdictLines(findings: readonly Finding[], width: number, ink: ChalkInstance): string {
  return findings
    .map(({ verdict, rule, says, change }) =>
      verdictBlock(verdict, [rule, says, ...(verdict === 'pass' || change === '' ? [] : [`→ ${change}`])], width, ink)
    )
    .join('\n')
}

/** Lines beside the word of their verdict. */
export function verdictBlock(verdict: Verdict, lines: readonly string[], width: number, ink: ChalkInstance): string {
  const inks: { readonly [V in Verdict]: (text: string) => string } = {
    pass: ink.green,
    caution: ink.yellow,
    fail: ink.red,
    'not-judged': ink.cyan
  }
  const text = lines.map(line => indented(line, width)).join('\n')
  return `${inks[verdict](WORDS[verdict].padEnd(INDENT))}${text.trimStart()}`
}

function indented(text: string, width: number): string {
  const margin = ' '.repeat(INDENT)
  return wrapAnsi(text, Math.max(20, width - INDENT))
    .split('\n')
    .map(line => margin + line)
    .join('\n')
}

export function verdictWord(verdict: Verdict): string {
  return WORDS[verdict]
}
