import type { Given } from '../formula/given.ts'
import type { ReadJob } from '../job/read-job.ts'
import { type Diagnostic, onCommandLine } from '../quantity/diagnostic.ts'
import type { Outcome } from '../quantity/fault.ts'
import { parseQuantity } from '../quantity/parse-quantity.ts'
import type { PracticeName } from '../trade/practice-names.ts'
import type { Wanted } from '../work/job/judge-job.ts'
import { type VariedField, variedField } from '../work/vary/varied-field.ts'
import { chosenRules } from './chosen-rules.ts'

/** The words of `sweep` and `solve` that only make sense beside the job. */
interface VaryWords {
  readonly field: string
  readonly from: string
  readonly to: string
  readonly steps: Given
  readonly only: readonly string[] | null
  readonly skip: readonly string[] | null
  readonly practice: PracticeName | null
}

export interface Varied {
  readonly field: VariedField
  readonly from: number
  readonly to: number
  readonly steps: number
  readonly wanted: Wanted
}

const MOST_STEPS = 10_000

/** The field and the values that it is to take, or every fault of the words. */
export function readVaried(read: ReadJob, words: VaryWords): Varied | readonly Diagnostic[] {
  if (read.errors.length > 0) return read.errors
  const field = variedField(read, words.field)
  if (!field.ok) return [{ ...field.fault, where: onCommandLine('--field') }]
  const [from, to] = [words.from, words.to].map(text => parseQuantity(field.value.field.kind, text)) as [Amount, Amount]
  const errors = [...faultOf(from, '--from'), ...faultOf(to, '--to'), ...stepFault(words.steps)]
  if (!from.ok || !to.ok || errors.length > 0) return errors
  if (!(from.value.value < to.value.value))
    return [{ found: `${words.from} to ${words.to}`, accepted: 'the lesser value first', where: onCommandLine('--from') }]
  const rules = chosenRules(words.only ?? [], words.skip ?? [])
  const wanted = { rules, practice: words.practice ?? undefined }
  return { field: field.value, from: from.value.value, to: to.value.value, steps: words.steps.value, wanted }
}

type Amount = ReturnType<typeof parseQuantity>

function faultOf<T>(outcome: Outcome<T>, option: string): readonly Diagnostic[] {
  return outcome.ok ? [] : [{ ...outcome.fault, where: onCommandLine(option) }]
}

function stepFault({ value }: Given): readonly Diagnostic[] {
  return value >= 1 && value <= MOST_STEPS
    ? []
    : [{ found: `${value} steps`, accepted: `1 to ${MOST_STEPS}`, where: onCommandLine('--steps') }]
}
