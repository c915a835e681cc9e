import { Given } from '../formula/given.ts'
import type { Path } from './field.ts'
import type { Job } from './read-job.ts'
import { namesThermostat } from './thermostat-words.ts'
import { thingIn } from './thing-words.ts'

type Circuit = NonNullable<Job['circuit']>
export type JobItem = Circuit['runs'][number]['through'][number]

/** The name a load goes by: its hole, or its own. */
export function loadName({ heater, load }: Pick<Circuit['loads'][number], 'heater' | 'load'>): string {
  return heater ?? load ?? ''
}

/** A fuse, breaker, switch or the like that the current passes. */
export interface MarkedItem {
  /** `fuse F9`. */
  readonly what: string
  readonly does: 'protects' | 'switches' | 'joins'
  /** By which a label names it: of what has words alone, the last of them. */
  readonly mark: string
  /** By itself at too much heat: a thermostat, or contacts that one works. */
  readonly opensByHeat: boolean
}

export function markedItem({ what, fuse, breaker, switch: switched, thermostat }: JobItem): MarkedItem {
  if (fuse !== null) return { what: `fuse ${fuse}`, does: 'protects', mark: fuse, opensByHeat: false }
  if (breaker !== null) return { what: `breaker ${breaker}`, does: 'protects', mark: breaker, opensByHeat: false }
  if (switched !== null) return { what: `switch ${switched}`, does: 'switches', mark: switched, opensByHeat: namesThermostat(switched) }
  if (thermostat !== null) return { what: `thermostat ${thermostat}`, does: 'switches', mark: thermostat, opensByHeat: true }
  const words = what ?? ''
  const does = doingOf(words)
  const opensByHeat = does === 'switches' && namesThermostat(words)
  return { what: words, does, mark: words.trim().split(/\s+/).at(-1) ?? words, opensByHeat }
}

/** What opens by itself at too much current. */
export const PROTECTOR = /\b(fuse|breaker|protector)\b/i

function doingOf(what: string): MarkedItem['does'] {
  const thing = thingIn(what)
  if (PROTECTOR.test(thing)) return 'protects'
  return /\b(switch|relay)\b/i.test(thing) || namesThermostat(what) ? 'switches' : 'joins'
}

/** A fuse or breaker of which nobody said where on the wire of its run it sits: anywhere. */
export function unsaidAlong({ high }: Given, path: Path): Given {
  return new Given(0, { low: 0, high, assumed: 'default: at which end of its run it sits is not said', at: [...path, 'along'] })
}
