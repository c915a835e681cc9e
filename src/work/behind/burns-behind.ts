import type { Job } from '../../job/read-job.ts'
import type { testGas } from '../../rules/leak/test-gas.ts'
import type { SubjectOf } from '../../rules/rule.ts'
import { mayLeak } from './behind-the-metal.ts'
import { FUEL } from './fluids.ts'
import { itsLiquid } from './its-liquid.ts'
import { plainWords } from './plain-words.ts'

/** An engine is named after what it burns, and has coolant and oil in it as well. */
const ENGINE = /\b(petrol|gasoline|diesel|gas|lpg) (engine|motor)s?\b/gu

const COOLANT = /^(coolants?|antifreeze|glycol|brine|(fresh|sea|salt|rain)?water)$/
/** What may stand beside a name of coolant or water. Any other word may say what else is in it: a separator's water lies under fuel. */
const BESIDE: ReadonlySet<string> = new Set(
  `% ° °c c a an and at from in its of our own the to under up with no open closed fresh hot cold warm engine motor cylinder head block jacket cooling
   radiator thermostat elbow housing hose hoses pipe pipes line circuit loop gallery passage passages pump raw sea salt river lake harbour rain
   tap mains drinking ethylene propylene red green blue pink orange yellow bar psi kpa pressure below behind line hull flow return`.split(
    /\s+/
  )
)
/** A header tank by itself may hold fuel. */
const ITS_TANK = /\b(coolants?|water) (expansion |header )?tank\b/u

/** Whether what is or was behind the metal burns, or its vapour does, as far as its name tells: surely not where that says no more than coolant or water. */
export function burnsBehind(ask: Job['ask-first']): SubjectOf<typeof testGas>['burns'] {
  const told = itsLiquid(plainWords(ask['behind-the-metal'] ?? ''))
  const plain = told.replace(ENGINE, ' ')
  if (FUEL.test(plain)) return 'yes'
  if (!mayLeak({ 'ask-first': ask })) return 'no'
  const words = plain
    .replace(ITS_TANK, 'water')
    .split(' ')
    .filter(one => one !== '')
  return words.some(one => COOLANT.test(one)) && words.every(one => COOLANT.test(one) || BESIDE.has(one) || /^\d/.test(one))
    ? 'no'
    : 'unsure'
}
