import { stringify } from 'yaml'
import type { Field, Path } from './field.ts'
import { FieldReader } from './read-fields.ts'
import type { Job } from './read-job.ts'
import { JOB } from './schema/job.ts'
import { readYaml } from './yaml-text.ts'

/** A field and its text, as it would stand in a file. */
export interface FieldText {
  readonly path: Path
  readonly text: string
}

/** A value, and the path in the job where it goes. */
export interface FieldValue {
  readonly path: Path
  readonly value: unknown
}

/**
 * What a job that was read becomes a part of with one more field in it. Where the block of the field was left out, the
 * whole block is read, with the fields that must stand beside it. Null where that cannot be read.
 */
export function readText(job: Job, { path, text }: FieldText, beside: readonly FieldText[]): FieldValue | null {
  const there = path.slice(0, depthOf(job, path))
  const written = there.length === path.length ? text : blockText(there, [...beside, { path, text }])
  const { job: source, errors } = readYaml('', written)
  const reader = new FieldReader(source)
  const value = reader.read(fieldAt(JOB, there), source.document.contents, there)
  return errors.length + reader.errors.length > 0 ? null : { path: there, value }
}

/** How far down the job has blocks: to the field itself, or to the first block that was left out. */
export function depthOf(job: Job, path: Path): number {
  let node: unknown = job
  for (const [i, key] of path.entries()) {
    node = (node as { readonly [key: string]: unknown })[key]
    if (node === null || node === undefined) return i + 1
  }
  return path.length
}

function blockText(block: Path, fields: readonly FieldText[]): string {
  const tree: Record<string, unknown> = {}
  for (const { path, text } of fields) if (startsWith(path, block)) put(tree, path.slice(block.length), text)
  return stringify(tree, { lineWidth: 0 })
}

function startsWith(path: Path, block: Path): boolean {
  return block.every((key, i) => path[i] === key)
}

function put(tree: Record<string, unknown>, [key, ...rest]: Path, text: string): void {
  const name = String(key)
  if (rest.length === 0) tree[name] = readYaml('', text).job.document.toJS()
  else {
    tree[name] ??= {}
    put(tree[name] as Record<string, unknown>, rest, text)
  }
}

function fieldAt(field: Field, [key, ...rest]: Path): Field {
  if (key === undefined) return field
  if (field.is === 'map') return fieldAt(field.of[key]!, rest)
  if (field.is === 'named' || field.is === 'list') return fieldAt(field.of, rest)
  throw new Error(`no field ${key} below a field of one value`)
}
