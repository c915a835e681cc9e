import type { Diagnostic } from '../quantity/diagnostic.ts'
import { bad, good, type Outcome } from '../quantity/fault.ts'
import { quoted, visible } from '../quantity/quoted.ts'
import { faultText } from '../report/fault-text.ts'
import { documentOf, findingJson } from '../report/json.ts'
import { sheetHtml } from '../report/sheet/html.ts'
import { sheetMarkdown } from '../report/sheet/markdown.ts'
import type { Sheet } from '../report/sheet/sheet.ts'
import { type JudgedJob, judgedJob } from '../work/job/judged-job.ts'
import { sheetOf } from '../work/sheet/sheet.ts'
import type { Run, Shell } from './describe.ts'
import { exitOf } from './exit.ts'
import { readJobFile } from './read-job-file.ts'
import { sheet as description } from './sheet.ts'
import { readWords } from './words.ts'
import { writeWhole } from './write-whole.ts'

type Printer = (sheet: Sheet) => string

interface Output {
  readonly name: string
  readonly printer: Printer
}

const PRINTERS: { readonly [ending: string]: Printer } = { '.html': sheetHtml, '.md': sheetMarkdown }

/** The ending says in which form it is written. */
function readOutput(name: string): Outcome<Output> {
  const printer = PRINTERS[/\.[^./\\]+$/.exec(name)?.[0].toLowerCase() ?? '']
  return printer === undefined
    ? bad(quoted(name), 'a file that ends in .html or .md; for PDF, print the .html from a browser')
    : good({ name, printer })
}

export const run: Run = async (typed, shell) => {
  const { words, errors } = readWords(description.rows, { output: readOutput }, typed)
  const made = errors.length > 0 ? { errors } : await written(words, shell)
  for (const error of made.errors) shell.err(faultText(error))
  if (shell.json) shell.out(`${JSON.stringify(documentFor(made), null, 2)}\n`)
  else if (made.errors.length === 0 && !shell.quiet)
    shell.err(
      `wrote ${visible(words.output.name)}${words.output.printer === sheetHtml ? '; to look at it, or to print it, open it in a browser' : ''}\n`
    )
  return exitOf({ errors: made.errors, findings: made.judged?.answer.findings ?? [] }, shell)
}

interface Made {
  readonly judged?: JudgedJob
  readonly errors: readonly Diagnostic[]
}

interface Wanted {
  readonly file: string
  readonly output: Output
  readonly force: boolean
}

async function written({ file, output: { name, printer }, force: over }: Wanted, { live }: Shell): Promise<Made> {
  const read = await readJobFile(file, live)
  if ('error' in read) return { errors: [read.error] }
  const judged = judgedJob(file, read.text, read.bench)
  const { errors } = judged.answer
  if (errors.length > 0) return { judged, errors }
  const refused = await writeWhole(name, printer(sheetOf(judged)), { over })
  return { judged, errors: refused === undefined ? [] : [refused] }
}

function documentFor({ judged, errors }: Made): object {
  const { title = '', results = [], findings = [] } = judged?.answer ?? {}
  const answer = {
    command: description.name,
    title,
    inputs: {},
    results,
    tables: {},
    findings,
    cautions: [],
    ...(errors.length === 0 ? {} : { errors })
  }
  return { ...documentOf(answer), findings: findings.map(finding => findingJson(finding, () => finding.where)) }
}
