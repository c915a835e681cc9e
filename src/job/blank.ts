import type { MapField } from './field.ts'

/** A block as it is read: its path, and what its fields became. */
export type Block = Record<string, unknown>

const blanks = new WeakMap<MapField, Block>()

/** A block of this form in which nothing stands yet: all blocks of a form begin as copies of one, and so are of one shape. */
export function blankOf(form: MapField): Block {
  const known = blanks.get(form)
  if (known !== undefined) return { ...known }
  const made = Object.fromEntries(['path', ...Object.keys(form.of)].map(name => [name, null]))
  blanks.set(form, made)
  return { ...made }
}
