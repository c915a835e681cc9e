import { quoted } from '../quantity/quoted.ts'
import type { Path } from './field.ts'
import type { LinkFault } from './unknown-name.ts'

/** Fields of which just one is to be given. */
export function oneOf(given: { readonly [field: string]: unknown }, path: Path): readonly LinkFault[] {
  const fields = Object.keys(given)
  const there = fields.filter(field => given[field] !== null)
  if (there.length === 1) return []
  return [
    { found: there.length === 0 ? `none of ${fields.join(', ')}` : there.join(' beside '), accepted: `one of ${fields.join(', ')}`, path }
  ]
}

/** Names that stand twice. */
export function twice(names: readonly (readonly [name: string, path: Path])[], what: string): readonly LinkFault[] {
  return names
    .filter(([name], i) => names.findIndex(([other]) => other === name) < i)
    .map(([name, path]) => ({ found: `two ${what}s named ${quoted(name)}`, accepted: 'a name of its own for each', path }))
}
