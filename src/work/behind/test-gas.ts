import type { Job } from '../../job/read-job.ts'
import type { testGas } from '../../rules/leak/test-gas.ts'
import type { SubjectOf } from '../../rules/rule.ts'
import { mayLeak } from './behind-the-metal.ts'
import { AIR, COOLANT, FUEL, FUEL_GAS, GAS, INERT, OXYGEN } from './fluids.ts'
import { plainWords } from './plain-words.ts'
import { mediumWords, testMedium } from './test-medium.ts'

type Subject = SubjectOf<typeof testGas>

/** What is named as not there: the nitrogen of a gas merchant is free of oxygen. */
const NOT_THERE = /\b(oxygen free|(no|not|never|without|instead of|rather than) (compressed |shop )?(air|oxygen|o2))\b/gu
/** Draws in what is around, and puts nothing in. */
const DRAWN = /\bvacuum\b/gu

/** What a job tests for leaks with: the worst that its words name. */
export function gasOf(medium: string, ask: Job['ask-first']): Subject['gas'] {
  if (testMedium(medium, ask) !== 'gas') return 'liquid'
  const words = mediumWords(medium, ask).replace(NOT_THERE, ' ').replace(DRAWN, ' ')
  if (OXYGEN.test(words)) return 'oxygen'
  if (FUEL_GAS.test(words)) return 'fuel'
  if (AIR.test(words)) return 'air'
  const rest = words.replace(new RegExp(`${INERT.source}( gas(es)?)?`, 'gu'), ' ')
  if (GAS.test(rest)) return 'other'
  return rest === words ? 'unsure' : 'inert'
}

/** An engine is named after what it burns, and has coolant and oil in it as well. */
const ENGINE = /\b(petrol|gasoline|diesel|gas|lpg) (engine|motor)s?\b/gu
/** Nobody knows what else stands in these. */
const DOUBTFUL = /\b(oils?|grease|crankcase|sump|bilge|waste|wastewater|sewage|sewer|slurry|unknown|mix\p{L}*)\b/u

/** Whether what is or was behind the metal burns, or its vapour does, as far as its name tells. */
export function burnsBehind(ask: Job['ask-first']): Subject['burns'] {
  const words = plainWords(ask['behind-the-metal'] ?? '').replace(ENGINE, ' ')
  if (FUEL.test(words)) return 'yes'
  if (!mayLeak({ 'ask-first': ask })) return 'no'
  return COOLANT.test(words) && !DOUBTFUL.test(words) && !GAS.test(words) ? 'no' : 'unsure'
}
