import type { Job } from '../../../job/read-job.ts'
import { plainWords } from './plain-words.ts'

/** What a leak test puts into the machine: its own liquid, plain water, or what may be a gas. */
export type TestMedium = 'own' | 'water' | 'gas'

const OWN = /^(?:its|the machine'?s|machine'?s|the engine'?s)? ?own ((?:\p{L}+ ?){1,3})$/u
const WATER: ReadonlySet<string> = new Set(['water', 'plain water', 'tap water', 'clean water', 'fresh water', 'cold water', 'warm water'])

/** Surely a liquid in an open vessel, whatever machine it is in. Fuel and fluid are not: either may be a gas under pressure. */
const LIQUIDS = [
  'oils?|coolants?|antifreeze|glycol|brine|\\p{L}*water',
  'petrol|gasoline|diesel|biodiesel|kerosene|kerosine|paraffin|jet (fuel|a1?)|methanol|ethanol',
  '(brake|clutch|hydraulic|steering|transmission|washer) fluid'
]
const LIQUID = new RegExp(`\\b(${LIQUIDS.join('|')})\\b`, 'u')

/** What stands beside the name of a liquid and leaves it one. */
const BESIDE: ReadonlySet<string> = new Set(
  'brake clutch cooling diesel drive engine ethylene fluid fresh fuel gear gearbox hydraulic jet liquid lubricating machine mix mixture motor power propylene raw sea steering transmission washer hot cold warm bar psi kpa'.split(
    ' '
  )
)
const VAGUE: ReadonlySet<string> = new Set(['fluid', 'fuel', 'liquid'])

/** What is a gas, or becomes one as soon as it is let out, fuel and refrigerant alike; a glycol named after one is a coolant. */
const GASES = [
  '\\p{L}*gas(es)?|liqu[ei]fied',
  'lp\\p{L}*|[cl]ng|gpl|\\p{L}*(methane|propane|butane)s?|(propylene|ethylene)(?! glycol)|propene|acetylene|hydrogen|h2|ether|dme',
  'ammonia|nh3|refrigerants?|freon\\p{L}*|halon|h?c?fcs?|hfos?|r ?\\d{2,4}\\p{L}{0,2}|sf6|so2|chlorine',
  'air|nitrogen|n2|oxygen|o2|argon|helium|carbon|co2|steam|vapou?rs?|mist|fumes?|vacuum|exhaust|boost|pneumatics?'
]
const GAS = new RegExp(`\\b(${GASES.join('|')})\\b`, 'u')

/** The machine's own liquid only where the text as a whole surely names one, and nothing behind the metal is a gas; whatever it is else may be one. */
export function testMedium(medium: string, { 'behind-the-metal': behind }: Job['ask-first']): TestMedium {
  const words = plainWords(medium)
  const there = plainWords(behind ?? '')
  if (WATER.has(words)) return there === words ? 'own' : 'water'
  const own = words === there ? words : OWN.exec(words)?.[1]
  return own !== undefined && isLiquid(own, there) && !GAS.test(`${words} ${there}`) ? 'own' : 'gas'
}

/** Its fluid or its fuel is what is behind the metal, and is as sure as that is named there. */
function isLiquid(own: string, behind: string): boolean {
  return VAGUE.has(own) ? LIQUID.test(behind) : LIQUID.test(own) && own.split(' ').every(staysLiquid)
}

function staysLiquid(word: string): boolean {
  return BESIDE.has(word) || /\d/.test(word) || LIQUID.test(word)
}
