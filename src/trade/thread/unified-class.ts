import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { quoted } from '../../quantity/quoted.ts'

export type InternalClass = '1B' | '2B' | '3B'
export type ExternalClass = '1A' | '2A' | '3A'

export interface UnifiedHalfClass<Name extends string> {
  readonly name: Name
  /** Why it was taken, where nobody gave it. */
  readonly assumed: string | null
}

export interface UnifiedClass {
  readonly system: 'unified'
  readonly internal: UnifiedHalfClass<InternalClass>
  readonly external: UnifiedHalfClass<ExternalClass>
}

const FORM = 'a class as "2B/2A", "2B" (internal, 1B to 3B) or "2A" (external, 1A to 3A)'

/** Reads `2B/2A`, `2B` or `2A`, in either order; a half that is not given, or no text at all, takes the usual class. */
export function readUnifiedClass(text: string | null): Outcome<UnifiedClass> {
  const halves =
    text === null
      ? []
      : text
          .trim()
          .toUpperCase()
          .split(/ ?\/ ?/)
  const internal = halves.filter(isInternal)
  const external = halves.filter(isExternal)
  const other = halves.find(half => !isInternal(half) && !isExternal(half))
  if (other !== undefined) return bad(`${quoted(other)} is no tolerance class of a unified thread`, FORM)
  if (internal.length > 1 || external.length > 1) {
    return bad(`two ${internal.length > 1 ? 'internal' : 'external'} classes in ${quoted(text ?? '')}`, FORM)
  }
  return good({ system: 'unified', internal: half(internal[0], '2B'), external: half(external[0], '2A') })
}

function half<Name extends string>(given: Name | undefined, usual: Name): UnifiedHalfClass<Name> {
  return given === undefined ? { name: usual, assumed: `usual class ${usual}` } : { name: given, assumed: null }
}

function isInternal(word: string): word is InternalClass {
  return /^[123]B$/.test(word)
}

function isExternal(word: string): word is ExternalClass {
  return /^[123]A$/.test(word)
}
