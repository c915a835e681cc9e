import { quoted } from '../quantity/quoted.ts'
import type { Path } from './field.ts'
import type { Job } from './read-job.ts'
import { type LinkFault, unknownName } from './unknown-name.ts'

/** A hole that is named for its heater: it must be there, and its part must tell power and voltage. */
export function ratedLinks({ holes, parts }: Pick<Job, 'holes' | 'parts'>, name: string, path: Path): readonly LinkFault[] {
  if (!Object.hasOwn(holes, name)) return unknownName(name, Object.keys(holes), { what: 'hole' }, path)
  const part = Object.hasOwn(parts, holes[name]!.takes) ? parts[holes[name]!.takes] : undefined
  if (part === undefined || part.rated !== null) return []
  return [
    { found: `the part of hole ${quoted(name)} without rated power and voltage`, accepted: 'a part with rated: { power, voltage }', path }
  ]
}
