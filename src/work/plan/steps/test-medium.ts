import type { Job } from '../../../job/read-job.ts'
import { plainWords } from './plain-words.ts'

/** What a leak test puts into the machine: its own fluid, plain water, or what may be a gas. */
export type TestMedium = 'own' | 'water' | 'gas'

const OWN = /^(its|the machine'?s|machine'?s|the engine'?s)? ?own( \p{L}+){1,3}$/u
const WATER: ReadonlySet<string> = new Set(['water', 'plain water', 'tap water', 'clean water', 'fresh water', 'cold water', 'warm water'])
/** Named anywhere, it is no fluid of the machine that a test may wait for. */
const NO_FLUID = /\b(air|nitrogen|gas|gases|co2|carbon|argon|helium|steam|vapou?r|vacuum|hydrogen|oxygen|or|and|then|not|no)\b/

/** The machine's own only where the text as a whole says so, or names what is behind the metal; what it may be else is a gas. */
export function testMedium(medium: string, { 'behind-the-metal': behind }: Job['ask-first']): TestMedium {
  const words = plainWords(medium)
  if (WATER.has(words)) return behind !== null && plainWords(behind) === words ? 'own' : 'water'
  const own = OWN.test(words) || (behind !== null && plainWords(behind) === words)
  return own && !NO_FLUID.test(words) ? 'own' : 'gas'
}
