import type { Field } from './field.ts'
import { JOB } from './schema/job.ts'

/** Past this many blocks nobody is helped by their names. */
const MOST = 3

/** The blocks of a job that a field of this name would be right in: `tools.wrench` for `range`. None where it is in too many of them. */
export function homesOf(name: string): readonly string[] {
  const homes = [...new Set(blocksWith(name, JOB, []))]
  return homes.length > MOST ? [] : homes
}

function blocksWith(name: string, field: Field, path: readonly string[]): readonly string[] {
  if (field.is === 'named' || field.is === 'list') return blocksWith(name, field.of, path)
  if (field.is !== 'map') return []
  const below = Object.entries(field.of).flatMap(([key, inner]) => blocksWith(name, inner, [...path, key]))
  return Object.hasOwn(field.of, name) && path.length > 0 ? [path.join('.'), ...below] : below
}
