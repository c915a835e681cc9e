import type { Diagnostic } from '../quantity/diagnostic.ts'
import { aboveRating } from '../rules/heater/above-rating.ts'
import { asked } from '../rules/rule.ts'
import { type Cold, heater as calculation } from '../trade/circuit/heater.ts'
import { HEATER_RESULTS } from '../work/results/heater-results.ts'
import type { Run } from './describe.ts'
import { heater as description } from './heater.ts'
import { likewise } from './likewise.ts'
import { quickSum } from './quick-sum.ts'
import { refusal, refused } from './refusal.ts'
import { sum } from './sum.ts'
import type { Words } from './words.ts'

type HeaterWords = Words<typeof description.rows>

export const run: Run = quickSum(description, {}, words => {
  const cold = coldOf(words)
  if (refused(cold)) return cold
  const atV = words.at ?? likewise(words.voltage, 'at', 'the rated voltage')
  return sum({
    title: `${words.count.value === 1 ? 'one heater' : `${words.count.value} heaters in parallel`}, hot unless said otherwise`,
    tree: () => ({ powerW: words.power, ratedV: words.voltage, atV, count: words.count.value, cold }),
    calculation,
    taken: words.at === null ? { at: { value: atV, why: 'the rated voltage' } } : {},
    results: HEATER_RESULTS,
    findings: r => (words.at === null ? [] : [asked(aboveRating, { ...r, steadyHigh: false })]),
    cautions: r => [
      ...(r.meterOhm === undefined
        ? ['what a meter reads cold is not known: give --resistance-change with --hot, or --cold-multiple']
        : ['the cold reading is for 20 °C: take off what the leads of the meter read when they touch, 0.2 ohm or more'])
    ]
  })
})

/** What is known of the current while the element is cold. The two ways of saying it shut each other out. */
function coldOf(words: HeaterWords): Cold | readonly Diagnostic[] {
  const { 'cold-multiple': coldFactor, 'resistance-change': resistanceChangePerK, hot: hotC } = words
  if (coldFactor !== null && resistanceChangePerK !== null)
    return refusal('--cold-multiple', '--cold-multiple beside --resistance-change', 'one of the two')
  if (coldFactor !== null) return { by: 'multiple', coldFactor }
  if (resistanceChangePerK !== null && hotC !== null) return { by: 'coefficient', resistanceChangePerK, hotC }
  if (resistanceChangePerK !== null)
    return refusal('--hot', '--resistance-change without --hot', 'the temperature of the element in use too, as --hot "400 °C"')
  return { by: 'unknown' }
}
