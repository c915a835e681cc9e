import type { Job } from '../../job/read-job.ts'
import { GAS, LIQUID } from './fluids.ts'
import { plainWords } from './plain-words.ts'

/** What a leak test puts into the machine: its own liquid, plain water, or what may be a gas. */
export type TestMedium = 'own' | 'water' | 'gas'

const OWN = /^(?:its|the machine'?s|machine'?s|the engine'?s)? ?own ((?:\p{L}+ ?){1,3})$/u
const WATER: ReadonlySet<string> = new Set(['water', 'plain water', 'tap water', 'clean water', 'fresh water', 'cold water', 'warm water'])

/** What stands beside the name of a liquid and leaves it one. */
const BESIDE: ReadonlySet<string> = new Set(
  'brake clutch cooling diesel drive engine ethylene fluid fresh fuel gear gearbox hydraulic jet liquid lubricating machine mix mixture motor power propylene raw sea steering transmission washer hot cold warm bar psi kpa'.split(
    ' '
  )
)
const VAGUE: ReadonlySet<string> = new Set(['fluid', 'fuel', 'gas', 'liquid'])

/** The machine's own liquid only where the text as a whole surely names one, and nothing behind the metal is a gas; whatever it is else may be one. */
export function testMedium(medium: string, { 'behind-the-metal': behind }: Job['ask-first']): TestMedium {
  const words = plainWords(medium)
  const there = plainWords(behind ?? '')
  const named = plainWords(nameOf(behind ?? ''))
  if (WATER.has(words)) return named === words && !GAS.test(there) ? 'own' : 'water'
  const own = words === there ? words : ownIn(words, named)
  return own !== undefined && isLiquid(own, there) && !GAS.test(`${words} ${there}`) ? 'own' : 'gas'
}

/** What comes before a comma; after it stands how it is there, as in "gear oil, no pressure". */
function nameOf(behind: string): string {
  return behind.split(/,(?!\d)/)[0]!
}

/** Its fluid or its fuel is what is behind the metal, and is as sure as that is named there. */
function isLiquid(own: string, behind: string): boolean {
  return VAGUE.has(own) ? LIQUID.test(behind) : LIQUID.test(own) && own.split(' ').every(staysLiquid)
}

function staysLiquid(word: string): boolean {
  return BESIDE.has(word) || /\d/.test(word) || LIQUID.test(word)
}

/** What the machine has in it already, as the medium names it: `fuel` of "its own fuel". */
function ownIn(words: string, there: string): string | undefined {
  return words === there ? words : OWN.exec(words)?.[1]
}

/** A medium that is called no more than the machine's own gas, fuel or fluid is what stands there. */
export function mediumText(medium: string, { 'behind-the-metal': behind }: Job['ask-first']): string {
  const there = behind ?? ''
  return VAGUE.has(ownIn(plainWords(medium), plainWords(there)) ?? '') ? `${medium}, ${there}` : medium
}
