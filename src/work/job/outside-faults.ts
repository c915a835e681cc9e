import type { OutsideRange } from '../../formula/outside-range.ts'
import type { ReadJob } from '../../job/read-job.ts'
import type { Diagnostic, Where } from '../../quantity/diagnostic.ts'

/**
 * A number of a job that lies outside the range of a formula: the field that has it is the place. Where it was worked out, that is the
 * field that moves it most, and the others are named after it.
 */
export function outsideFaults(
  { found, accepted, value, from }: OutsideRange,
  { locate, file }: Pick<ReadJob, 'locate' | 'file'>
): readonly Diagnostic[] {
  const nowhere: Where = { file, line: null, column: null, path: '' }
  const own = from.filter(one => one.value === value || one.low === value || one.high === value)
  const [first, ...others] = (own.length > 0 ? own.slice(0, 1) : from).map(({ at }) => locate(at))
  const also = others.length === 0 ? '' : ` (moved by ${others.map(({ path }) => path).join(', ')} too)`
  return [{ found: `${found}${also}`, accepted, where: first ?? nowhere }]
}
