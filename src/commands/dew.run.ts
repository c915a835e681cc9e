import { type BoundsOf, nominalOf } from '../formula/bounds.ts'
import { plainOf } from '../formula/given.ts'
import { surfaceWet } from '../rules/dew/surface-wet.ts'
import { asked } from '../rules/rule.ts'
import { dew as calculation, type Dew, overIce } from '../trade/heat/dew.ts'
import { dewCautions } from '../trade/heat/warm-cautions.ts'
import { DEW_RESULTS } from '../work/results/dew-results.ts'
import type { Run } from './describe.ts'
import { dew as description } from './dew.ts'
import { quickSum } from './quick-sum.ts'
import { refusal, refused } from './refusal.ts'
import { sum } from './sum.ts'
import type { Words } from './words.ts'

export const run: Run = quickSum(description, {}, words => {
  const moisture = moistureOf(words)
  if (refused(moisture)) return moisture
  const tree: Dew = { airC: words.air, moisture, altitudeM: words.altitude, surfaceC: words.surface }
  const ice = nominalOf(tree, overIce)
  return sum({
    title: `moist air, by ${moisture.by === 'humidity' ? 'its humidity' : 'its wet bulb'}`,
    tree: () => tree,
    calculation: x => calculation(x, ice),
    results: DEW_RESULTS,
    findings: ({ surfaceMarginK, governs }) =>
      surfaceMarginK === null ? [] : [asked(surfaceWet, { surface: { surfaceMarginK, of: 'the surface', governs } })],
    cautions: r => [...noIce(r), ...dewCautions(plainOf(tree).plain)]
  })
})

function moistureOf({ air, humidity, wet }: Words<typeof description.rows>): Dew['moisture'] | ReturnType<typeof refusal> {
  if (humidity !== null && wet !== null) return refusal('--wet', '--wet beside --humidity', 'one of the two')
  if (humidity !== null) return { by: 'humidity', humidityPercent: humidity }
  if (wet === null) return refusal('--humidity', 'neither --humidity nor --wet', 'one of the two, as --humidity "78 %"')
  if (wet.value > air.value) return refusal('--wet', 'a wet bulb that is warmer than its air', 'a wet bulb at --air or below')
  return { by: 'wet-bulb', wetBulbC: wet }
}

/** Why a figure over ice is not there. */
function noIce({ frostPointC, humidityOverIcePercent }: BoundsOf<ReturnType<typeof calculation>>): readonly string[] {
  return [
    ...(frostPointC === null ? ['no frost point: the dew point lies above 0 °C'] : []),
    ...(humidityOverIcePercent === null ? ['no humidity over ice: the air is above 0 °C'] : [])
  ]
}
