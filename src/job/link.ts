import type { Diagnostic } from '../quantity/diagnostic.ts'
import { nearest } from '../quantity/near.ts'
import { quoted } from '../quantity/quoted.ts'
import type { Path } from './field.ts'

/** A fault of values that only fit together, before its place is looked up. */
export type Found = Omit<Diagnostic, 'where'> & { readonly path: Path }

/** Nothing where the name is known; else which ones are. */
export function knownName(name: string, known: readonly string[], what: string, path: Path): readonly Found[] {
  if (known.includes(name)) return []
  const near = nearest(name, known)
  const fault = {
    found: `${quoted(name)}, which is no ${what} of this file`,
    accepted: known.length === 0 ? `a ${what} named under ${what}s` : known.map(quoted).join(', '),
    path
  }
  return [near === undefined ? fault : { ...fault, near }]
}

/** Fields of which just one is to be given. */
export function oneOf(given: { readonly [field: string]: unknown }, path: Path): readonly Found[] {
  const fields = Object.keys(given)
  const there = fields.filter(field => given[field] !== null)
  if (there.length === 1) return []
  return [
    { found: there.length === 0 ? `none of ${fields.join(', ')}` : there.join(' beside '), accepted: `one of ${fields.join(', ')}`, path }
  ]
}

/** Names that stand twice. */
export function twice(names: readonly (readonly [name: string, path: Path])[], what: string): readonly Found[] {
  return names
    .filter(([name], i) => names.findIndex(([other]) => other === name) < i)
    .map(([name, path]) => ({ found: `two ${what}s named ${quoted(name)}`, accepted: 'a name of its own for each', path }))
}
