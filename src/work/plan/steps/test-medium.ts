import type { Job } from '../../../job/read-job.ts'
import { plainWords } from './plain-words.ts'

/** What a leak test puts into the machine: its own liquid, plain water, or what may be a gas. */
export type TestMedium = 'own' | 'water' | 'gas'

const OWN = /^(its|the machine'?s|machine'?s|the engine'?s)? ?own( \p{L}+){1,3}$/u
const WATER: ReadonlySet<string> = new Set(['water', 'plain water', 'tap water', 'clean water', 'fresh water', 'cold water', 'warm water'])
/** Named in the medium, it is no fluid of the machine that a test may wait for. */
const NO_FLUID = /\b(air|carbon|vapou?r|vacuum|or|and|then|not|no)\b/

/** What is a gas, or becomes one as soon as it is let out, fuel and refrigerant alike; a glycol named after one is a coolant. */
const GASES = [
  '\\p{L}*gas(es)?',
  'lpg\\p{L}*|[cl]ng|gpl|\\p{L}*(methane|propane|butane)s?|(propylene|ethylene)(?! glycol)|propene|acetylene|hydrogen|h2|ether|dme',
  'ammonia|nh3|refrigerants?|freon\\p{L}*|halon|h?c?fcs?|hfos?|r ?\\d{2,4}\\p{L}{0,2}|sf6|so2|chlorine',
  'compressed air|air under pressure|nitrogen|n2|oxygen|o2|argon|helium|carbon dioxide|co2|steam'
]
const GAS = new RegExp(`\\b(${GASES.join('|')})\\b`, 'u')

/** The machine's own only where the text as a whole says so, or names what is behind the metal, and no gas is named; what it may be else is a gas. */
export function testMedium(medium: string, { 'behind-the-metal': behind }: Job['ask-first']): TestMedium {
  const words = plainWords(medium)
  if (WATER.has(words)) return behind !== null && plainWords(behind) === words ? 'own' : 'water'
  const own = OWN.test(words) || (behind !== null && plainWords(behind) === words)
  return own && !NO_FLUID.test(words) && !GAS.test(`${words} ${plainWords(behind ?? '')}`) ? 'own' : 'gas'
}
