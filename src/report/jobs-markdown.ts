import type { Finding, Verdict } from '../rules/finding.ts'
import { verdictWord } from './findings-text.ts'
import type { JobAnswer, PlacedFinding } from './jobs-answer.ts'
import { RANK, summary } from './jobs-page.ts'
import type { JobsPage, JobsPrinter } from './jobs-printer.ts'

/** Jobs as Markdown, for a comment or a record: a table of what is less than a pass, what passed in one line. */
export function printer(_page: JobsPage): JobsPrinter {
  const verdicts: (Verdict | null)[] = []
  return {
    job: job => {
      verdicts.push(job.verdict)
      return `${jobText(job)}\n\n`
    },
    end: () => `**${summary(verdicts)}**\n`
  }
}

function jobText(job: JobAnswer): string {
  const head = `## ${plain(job.file)}${job.title === '' ? '' : `: ${plain(job.title)}`}`
  return [head, ...(job.verdict === null ? errorsText(job) : findingsText(job))].join('\n\n')
}

function errorsText({ errors }: JobAnswer): readonly string[] {
  const rows = errors.map(({ where, found, accepted, near }) => [
    [where.line, where.column].filter(part => part !== null).join(':'),
    where.path,
    found,
    near === undefined ? accepted : `${accepted}; did you mean ${near}?`
  ])
  return ['NOT READ', tableText(['place', 'field', 'found', 'accepted'], rows)]
}

function findingsText({ findings }: JobAnswer): readonly string[] {
  if (findings.length === 0) return ['NOT JUDGED: nothing in it is asked about']
  const passed = findings.filter(({ verdict }) => verdict === 'pass').map(({ rule, thing }) => `${rule} (${thing})`)
  const rest = findings.filter(({ verdict }) => verdict !== 'pass').sort((a, b) => RANK.indexOf(a.verdict) - RANK.indexOf(b.verdict))
  return [
    ...(rest.length === 0 ? [] : [tableText(['verdict', 'rule', 'of', 'place', 'says', 'change'], rest.map(rowOf))]),
    ...(passed.length === 0 ? [] : [`${verdictWord('pass')}: ${passed.map(plain).join(', ')}`])
  ]
}

function rowOf({ verdict, rule, thing, where, says, change }: PlacedFinding): readonly string[] {
  const { line, column, path } = where
  return [verdictWord(verdict), rule, thing, `${line === null ? '' : `${line}:${column} `}${path}`, says, change]
}

function tableText(headings: readonly Finding['says'][], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.map(plain).join(' | ')} |`
  return [line(headings), `|${headings.map(() => '---').join('|')}|`, ...rows.map(line)].join('\n')
}

/** Text of a job in Markdown: nothing in it is mark-up. */
function plain(text: string): string {
  return text.replace(/[\\`*_[\]<>|~#]/g, '\\$&').replace(/[\p{Cc}\p{Cf}]+/gu, ' ')
}
