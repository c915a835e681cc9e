import type { Job } from '../../job/read-job.ts'
import type { testGas } from '../../rules/leak/test-gas.ts'
import type { SubjectOf } from '../../rules/rule.ts'
import { AIR, FUEL_GAS, GAS, INERT, OXYGEN } from './fluids.ts'
import { clausesOf } from './plain-words.ts'
import { mediumText, testMedium } from './test-medium.ts'

type Gas = SubjectOf<typeof testGas>['gas']

const NAMED_INERT = '(nitrogen|n2|argon|helium)\\b'
/** The nitrogen of a gas merchant, by its name. */
const FREE_OF_OXYGEN = new RegExp(
  `\\boxygen free (?=((dry|pure|clean|compressed|bottled|industrial|technical) )*${NAMED_INERT})|^oxygen free( grade| quality)?$` +
    `|(?<=^((dry|pure|clean|compressed|bottled) )*${NAMED_INERT} )(oxygen free|free (of|from) oxygen)$`,
  'gu'
)
const UNWANTED = `((compressed |shop )?air|oxygen|o2|${FUEL_GAS.source})\\b(?! free)`
/** What is named as not there; what follows an `if` may be. */
const NOT_THERE = new RegExp(
  `(?<!\\bif )\\b(no|not|never|neither|without|instead of|rather than) (any )?${UNWANTED}( n?or ${UNWANTED})*`,
  'gu'
)
/** Draws in what is around, and puts nothing in. */
const DRAWN = /\bvacuum\b/gu
/** Too little hydrogen to burn, as long as the rest is an inert gas: of a clause, so that each share is that of its own gas. */
const TRACE = /(?<!\d )\b([1-5]|[0-4] \d) ?% (hydrogen|h2)\b(?! \d)|\b(hydrogen|h2) [1-5] ?%(?= in (nitrogen|n2|argon)\b)/gu
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
  const clauses = clausesOf(mediumText(medium, ask)).map(present)
  const words = clauses.join(' ')
  if (OXYGEN.test(words)) return 'oxygen'
  if (FUEL_GAS.test(enough(words, clauses))) return 'fuel'
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
function enough(words: string, clauses: readonly string[]): string {
  return INERT.test(words) && !AIR.test(words) ? clauses.map(clause => clause.replace(TRACE, ' ')).join(' ') : words
}

/** Without a point: plain words have none, and 99.9 % reads as 99 9 %. */
const SHARE = /\b(\d+)(?: \d+)? ?%/gu
const SHARE_TOLD = /\d ?%/u
/** Of less nobody says what the rest is. */
const WHOLE_PERCENT = 99

function isPlain(rest: string): boolean {
  const words = rest.replace(CLEAN, ' ').split(' ')
  const shares = [...rest.matchAll(SHARE)].reduce((sum, [, percent]) => sum + Number(percent), 0)
  if (SHARE_TOLD.test(rest) && shares < WHOLE_PERCENT) return false
  return words.every(word => word === '' || BESIDE.has(word) || /^\d+(%|bar|psi|[km]pa)?$/.test(word))
}
