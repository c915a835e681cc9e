import { type Diagnostic, onCommandLine } from '../quantity/diagnostic.ts'
import type { Units } from '../quantity/unit-system.ts'
import type { Answer, Result, Table } from '../report/answer.ts'
import { spreadText, valueText } from '../report/figures.ts'
import { verdictWord } from '../report/findings-text.ts'
import { inInches } from '../report/inch-first.ts'
import type { JobAnswer, PlacedFinding } from '../report/jobs-answer.ts'
import { type Comparison, compare as compared, type MovedResult, type MovedVerdict } from '../work/compare.ts'
import { judgeRead } from '../work/job/judge-job.ts'
import { compare as description } from './compare.ts'
import type { Run, Shell } from './describe.ts'
import { blankAnswer, printAnswer, wordInput } from './print-answer.ts'
import { readJobAt } from './read-job-at.ts'
import { refuse } from './refuse.ts'
import { readWords } from './words.ts'

export const run: Run = async (typed, shell) => {
  const { words } = readWords(description.rows, {}, typed)
  const { files } = words
  if (files.length !== 2) return refuse(description.name, [twoFiles(files)], shell)
  const [before, after] = [await judgedAt(files[0]!, shell), await judgedAt(files[1]!, shell)]
  const errors = [...before.errors, ...after.errors]
  if (errors.length > 0) return refuse(description.name, errors, shell)
  const moved = compared(before, after)
  await printAnswer(answerOf({ before, after, moved }, shell.json ? 'metric' : shell.units), shell)
  return shell.strict && moved.worse ? 1 : 0
}

async function judgedAt(file: string, { live }: Shell): Promise<JobAnswer> {
  return judgeRead(await readJobAt(file, live))
}

function twoFiles(files: readonly string[]): Diagnostic {
  return { found: `${files.length} ${files.length === 1 ? 'file' : 'files'}`, accepted: 'two job files', where: onCommandLine('<files>') }
}

interface Compared {
  readonly before: JobAnswer
  readonly after: JobAnswer
  readonly moved: Comparison
}

function answerOf({ before, after, moved }: Compared, units: Units): Answer {
  const count = (n: number, what: string) => `${n} ${what}${n === 1 ? '' : 's'}`
  const title = `${before.file} and ${after.file}: ${count(moved.verdicts.length, 'verdict')} and ${count(moved.results.length, 'result')} moved`
  return {
    ...blankAnswer('compare', title),
    inputs: { before: wordInput(before.file), after: wordInput(after.file) },
    tables: {
      ...(moved.verdicts.length === 0 ? {} : { verdicts: verdictTable(moved.verdicts) }),
      ...(moved.results.length === 0 ? {} : { results: resultTable(moved.results, units) })
    }
  }
}

/** JSON has every figure unrounded; the table for the eye shows both as they are printed everywhere. */
function resultTable(results: readonly MovedResult[], units: Units): Table {
  return {
    name: 'results',
    columns: [
      { key: 'what', name: 'result', unit: '' },
      { key: 'was', name: 'before', unit: '' },
      { key: 'is', name: 'after', unit: '' }
    ],
    rows: results.map(({ id, before, after }) => ({
      id,
      // With a blank, so that a narrow page may break it.
      what: id.replace(':', ': '),
      name: (after ?? before)!.name,
      unit: (after ?? before)!.unit,
      was: shown(before, units),
      is: shown(after, units),
      ...ends('before', before),
      ...ends('after', after)
    }))
  }
}

function ends(side: 'before' | 'after', result: Result | null) {
  return { [side]: result?.value ?? null, [`${side}-low`]: result?.low ?? null, [`${side}-high`]: result?.high ?? null }
}

function shown(moved: Result | null, units: Units): string {
  if (moved === null) return 'none'
  const result = units === 'inch' ? inInches(moved) : moved
  const spread = spreadText(result, result)
  return spread === '' ? valueText(result) : `${valueText(result)} (${spread})`
}

function verdictTable(verdicts: readonly MovedVerdict[]): Table {
  return {
    name: 'verdicts',
    columns: [
      { key: 'moved', name: 'moved', unit: '' },
      { key: 'rule', name: 'rule', unit: '' },
      { key: 'thing', name: 'of', unit: '' },
      { key: 'was', name: 'before', unit: '' },
      { key: 'is', name: 'after', unit: '' },
      { key: 'says', name: 'says', unit: '' }
    ],
    rows: verdicts.map(({ moved, rule, thing, before, after }) => ({
      moved,
      rule,
      thing,
      was: word(before),
      is: word(after),
      before: before?.verdict ?? null,
      after: after?.verdict ?? null,
      says: (after ?? before)!.says
    }))
  }
}

function word(finding: PlacedFinding | null): string {
  return finding === null ? 'none' : verdictWord(finding.verdict)
}
