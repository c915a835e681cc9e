import { parse, parseDocument, stringify } from 'yaml'
import type { Path } from './field.ts'

/** What a job file says, as plain values: aliases and merge keys opened out. Of a file that was read without a fault. */
export type Said = { readonly [key: string]: unknown }

export function saidIn(text: string): Said {
  return merged(parseDocument(text, { merge: false, version: '1.2', schema: 'core' }).toJS()) as Said
}

/** The same job with other text at a path, written as in a file. */
export function saidWith(said: Said, path: Path, text: string): Said {
  return put(said, path, parse(text)) as Said
}

/** The job as the text of a file. */
export function textOf(said: Said): string {
  return stringify(said, { aliasDuplicateObjects: false, lineWidth: 0 })
}

function merged(node: unknown): unknown {
  if (Array.isArray(node)) return node.map(merged)
  if (typeof node !== 'object' || node === null) return node
  const { '<<': from, ...own } = Object.fromEntries(Object.entries(node).map(([key, value]) => [key, merged(value)]))
  return Object.assign({}, ...[from ?? []].flat(), own)
}

function put(node: unknown, [key, ...rest]: Path, value: unknown): unknown {
  if (key === undefined) return value
  if (Array.isArray(node)) return node.with(Number(key), put(node[Number(key)], rest, value))
  const held = (node ?? {}) as Said
  return { ...held, [key]: put(held[key], rest, value) }
}
