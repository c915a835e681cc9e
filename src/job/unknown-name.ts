import type { Diagnostic } from '../quantity/diagnostic.ts'
import { nearest } from '../quantity/near.ts'
import { quoted } from '../quantity/quoted.ts'
import type { Path } from './field.ts'

/** A fault between fields, before its place in the file is looked up. */
export type LinkFault = Omit<Diagnostic, 'where'> & { readonly path: Path }

/** A name that points at nothing; none where it does. `named`: where such a thing would stand, if the file has none. */
export function unknownName(
  name: string,
  known: readonly string[],
  { what, named = `named under ${what}s` }: { readonly what: string; readonly named?: string },
  path: Path
): readonly LinkFault[] {
  if (known.includes(name)) return []
  const near = nearest(name, known)
  const fault = {
    found: `${quoted(name)}, which is no ${what} of this file`,
    accepted: known.length === 0 ? `a ${what} ${named}` : known.map(quoted).join(', '),
    path
  }
  return [near === undefined ? fault : { ...fault, near }]
}
