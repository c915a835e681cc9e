import type { Job } from '../../job/read-job.ts'
import type { testGas } from '../../rules/leak/test-gas.ts'
import type { SubjectOf } from '../../rules/rule.ts'
import { AIR, FUEL_GAS, GAS, INERT, OXYGEN } from './fluids.ts'
import { clausesOf } from './plain-words.ts'
import { mediumText, testMedium } from './test-medium.ts'

type Gas = SubjectOf<typeof testGas>['gas']

/** The nitrogen of a gas merchant, by its name. */
const FREE_OF_OXYGEN = /\boxygen free (?=nitrogen\b)|^oxygen free$/gu
/** What is named as not there; what follows an `if` may be. */
const NOT_THERE = /(?<!\bif )\b(no|not|never|without|instead of|rather than) ((compressed |shop )?air|oxygen|o2)\b(?! free)/gu
/** Draws in what is around, and puts nothing in. */
const DRAWN = /\bvacuum\b/gu
/** Too little hydrogen to burn, as long as the rest is an inert gas. */
const TRACE = /(?<!\d )\b[1-5] ?% (hydrogen|h2)\b(?! \d)/gu
const INERT_GASES = new RegExp(`${INERT.source}( gas(es)?)?`, 'gu')

/** All that may stand beside the name of an inert gas; any other word may say that it is not what goes in. */
const CLEAN = /\b((oil|water|moisture|dust) free|free (of|from) (oil|water|moisture|dust))\b/gu
const BESIDE: ReadonlySet<string> = new Set(
  '% bar psi kpa mpa dry pure clean bottle bottled cylinder technical industrial grade compressed of from at in with and or a the only alone'.split(
    ' '
  )
)

/** What a job tests for leaks with: the worst that its words name. */
export function gasOf(medium: string, ask: Job['ask-first']): Gas {
  if (testMedium(medium, ask) !== 'gas') return 'liquid'
  const words = clausesOf(mediumText(medium, ask)).map(present).join(' ')
  if (OXYGEN.test(words)) return 'oxygen'
  if (FUEL_GAS.test(enough(words))) return 'fuel'
  if (AIR.test(words)) return 'air'
  const rest = words.replace(INERT_GASES, ' ')
  if (GAS.test(rest)) return 'other'
  return rest !== words && isPlain(rest) ? 'inert' : 'unsure'
}

/** What a clause names as going in. */
function present(clause: string): string {
  return clause.replace(FREE_OF_OXYGEN, '').replace(NOT_THERE, ' ').replace(DRAWN, ' ')
}

/** Without what is too little to burn. */
function enough(words: string): string {
  return INERT.test(words) && !AIR.test(words) ? words.replace(TRACE, ' ') : words
}

function isPlain(rest: string): boolean {
  const words = rest.replace(CLEAN, ' ').split(' ')
  return words.every(word => word === '' || BESIDE.has(word) || /^\d+(%|bar|psi|[km]pa)?$/.test(word))
}
