import type { Job } from '../../job/read-job.ts'
import type { testGas } from '../../rules/leak/test-gas.ts'
import type { SubjectOf } from '../../rules/rule.ts'
import { mayLeak } from './behind-the-metal.ts'
import { COOLANT, FUEL, GAS } from './fluids.ts'
import { plainWords } from './plain-words.ts'

/** An engine is named after what it burns, and has coolant and oil in it as well. */
const ENGINE = /\b(petrol|gasoline|diesel|gas|lpg) (engine|motor)s?\b/gu
/** Nobody knows what else stands in these. */
const DOUBTFUL = /\b(oils?|grease|crankcase|sump|bilge|waste|wastewater|sewage|sewer|slurry|unknown|mix\p{L}*)\b/u

/** Coolant of a machine that is named after what it burns, and no word of anything else of it. */
const ITS_COOLANT = new RegExp(
  [
    '^(coolants?|antifreeze|cooling water)',
    '(( (of|in|from|a|an|the|its|our|old|small|marine|two|four|2|4|stroke))*',
    ' (petrol|gasoline|diesel|(natural |bio|sewer )?gas|lpg|cng)',
    ' (engine|motor|generator|genset|tractor|digger|excavator|loader|outboard|truck|van|car|boat)s?',
    '| of (a|the|its|our) (petrol|gasoline|diesel))$'
  ].join(''),
  'u'
)

/** Whether what is or was behind the metal burns, or its vapour does, as far as its name tells. */
export function burnsBehind(ask: Job['ask-first']): SubjectOf<typeof testGas>['burns'] {
  const told = plainWords(ask['behind-the-metal'] ?? '')
  if (ITS_COOLANT.test(told)) return 'no'
  const words = told.replace(ENGINE, ' ')
  if (FUEL.test(words)) return 'yes'
  if (!mayLeak({ 'ask-first': ask })) return 'no'
  return COOLANT.test(words) && !DOUBTFUL.test(words) && !GAS.test(words) ? 'no' : 'unsure'
}
