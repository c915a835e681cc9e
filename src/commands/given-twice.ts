import type { Fault } from '../quantity/fault.ts'
import { quoted } from '../quantity/quoted.ts'

/** An option of one value that was given two: nobody knows which was meant. */
export function givenTwice(name: string, first: string, second: string): Fault {
  return { found: `--${name} twice: ${quoted(first)} and ${quoted(second)}`, accepted: `--${name} once` }
}
