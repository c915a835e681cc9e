// table: outside source. Rows of rows/ampacity.ts, each with its source and label.

import { describe, expect, it } from 'vitest'
import { ampacity, ampacityA } from '../../src/trade/circuit/ampacity.ts'
import { factorAtAltitude } from '../../src/trade/circuit/ampacity-altitude.ts'
import { BOAT_TABLE } from '../../src/trade/circuit/ampacity-boat.ts'
import { BOAT_BUNDLE, ecssBundleFactor, ecssPartLoadFactor } from '../../src/trade/circuit/ampacity-bundle.ts'
import { BUNDLE_ANCHORS, bundledA, FREE_AIR_ANCHORS, freeAirA } from '../../src/trade/circuit/ampacity-free-air.ts'
import { SMALLEST_WIRES } from '../../src/trade/circuit/ampacity-smallest-wire.ts'
import type { PracticeName } from '../../src/trade/practice-names.ts'
import { awgIn, checkRows, numberIn } from './electrical-rows.ts'
import { AMPACITY_ROWS } from './rows/ampacity.ts'
import type { ElectricalRow } from './rows/electrical-row.ts'

interface Lies {
  readonly practice: PracticeName
  readonly item: string
  readonly insulationC: number
  readonly ambientC?: number
  readonly altitudeM?: number
  readonly bundleCount?: number
}

function currentA({ practice, item, insulationC, ambientC = 30, altitudeM = 0, bundleCount = 1 }: Lies): number {
  const found = ampacity({ practice, conductor: { standard: 'awg', awg: awgIn(item) }, insulationC, ambientC, altitudeM, bundleCount })
  if (found.kind === 'no figure') throw new Error(found.says)
  return found.ampacityA
}

/** All conditions of the aircraft table at once: nothing may be taken off its figure. */
function aircraftA({ item, quantity }: ElectricalRow): number {
  const bundleCount = awgIn(item) >= 10 ? 40 : 9
  return currentA({ practice: 'aircraft', item, insulationC: numberIn(quantity.slice(20)), ambientC: 70, altitudeM: 18_288, bundleCount })
}

function bundledBoatA({ item, condition }: ElectricalRow): number {
  const ambientC = condition.includes('inside') ? 50 : 30
  return currentA({ practice: 'boat', item, insulationC: 105, ambientC, bundleCount: numberIn(condition) })
}

function engineSpaceFactor({ item }: ElectricalRow): number {
  return BOAT_TABLE.columns.find(({ insulationC }) => insulationC === numberIn(item))!.engineSpace!.factor
}

/** A current at its own rise is the printed one; the factor of the root must then be 1. */
function anchorA({ item, quantity, condition }: ElectricalRow): number {
  const anchor = FREE_AIR_ANCHORS.find(({ awg }) => awg === awgIn(quantity.includes('AWG') ? quantity : item))!
  return freeAirA({ ...anchor, riseK: numberIn(condition) })
}

const smallest = (run: 'single' | 'sheathed', standard: 'awg' | 'mm2') => () => {
  const { conductor } = SMALLEST_WIRES.boat.find(row => row.run === run && row.conductor.standard === standard)!
  return conductor.standard === 'awg' ? conductor.awg : conductor.areaMm2
}

/** By what a row says of its bundle: `8 wires; 60 % loaded`. */
function bundleAnchor({ quantity, item, condition }: ElectricalRow): number {
  const says = `${quantity}; ${item}; ${condition}`
  const [wires, loaded] = [/(\d+) wires(?!\s*AWG)/, /(\d+) % loaded/].map(number => Number(number.exec(says)![1]))
  return BUNDLE_ANCHORS.find(({ wiresCount, loadedPercent }) => wiresCount === wires && loadedPercent === loaded)!.factor
}

checkRows(
  'ampacity',
  AMPACITY_ROWS,
  [
    { rows: /^continuous current/, gives: aircraftA },
    {
      rows: /^allowable amperage, \d+ °C insulation/,
      gives: ({ item, quantity }) => currentA({ practice: 'boat', item, insulationC: numberIn(quantity) })
    },
    // Printed in whole amperes, and not rounded by one rule.
    {
      rows: /^allowable amperage inside engine space/,
      gives: ({ item }) => currentA({ practice: 'boat', item, insulationC: 105, ambientC: 50 }),
      within: 0.5
    },
    { rows: /^engine-space factor; (?!200)/, gives: engineSpaceFactor },
    {
      rows: /^factor for current-carrying conductors bundled/,
      gives: ({ item }) => BOAT_BUNDLE.find(({ leastCount }) => leastCount === numberIn(item))!.factor
    },
    { rows: /^allowable amperage, 105 °C boat cable/, gives: bundledBoatA, within: 0.05 },
    { rows: /^bundle derating factor K/, gives: ({ item }) => ecssBundleFactor(numberIn(item)) },
    { rows: ['ampacity-204'], gives: () => ecssPartLoadFactor(24.9) },
    { rows: ['ampacity-205'], gives: () => ecssPartLoadFactor(25) },
    { rows: ['ampacity-206'], gives: () => ecssPartLoadFactor(50.1) },
    { rows: /^free-air current/, gives: anchorA },
    { rows: ['ampacity-208'], gives: () => factorAtAltitude(6096) },
    {
      rows: ['ampacity-209'],
      gives: () => bundledA({ freeAirA: 47, altitudeFactor: factorAtAltitude(6096), bundleFactor: 1 }),
      within: 0.005
    },
    { rows: ['ampacity-210'], gives: bundleAnchor },
    // Two of its inputs were read from curves, and the print rounds 25.66 up.
    {
      rows: ['ampacity-211'],
      gives: () => bundledA({ freeAirA: 47, altitudeFactor: factorAtAltitude(6096), bundleFactor: 0.6 }),
      within: 0.5
    },
    { rows: ['ampacity-217'], gives: bundleAnchor },
    { rows: ['ampacity-220'], gives: () => factorAtAltitude(18_288) },
    { rows: ['ampacity-236'], gives: smallest('single', 'awg') },
    { rows: ['ampacity-237'], gives: smallest('sheathed', 'awg') },
    { rows: ['ampacity-238'], gives: smallest('single', 'mm2') },
    { rows: ['ampacity-239'], gives: smallest('sheathed', 'mm2') }
  ],
  {
    'ampacity-178': 'a factor of 1.00 for 200 °C is doubtful: √(150/170) = 0.94 is used',
    ...Object.fromEntries(
      AMPACITY_ROWS.filter(row => row.quantity.startsWith('indicative')).map(row => [
        row.id,
        'a maker calls it indicative: held below, not met'
      ])
    ),
    'ampacity-240': 'spacing of supports is a limit of the practice'
  }
)

describe('the aircraft figures beside those of a maker', () => {
  // A motorsport electronics maker's wiring appendix, single wires of 150 °C, called indicative (read-secondary).
  for (const row of AMPACITY_ROWS.filter(row => row.quantity.startsWith('indicative')))
    it(`${row.item} at ${row.condition} does not promise more`, () => {
      const ours = currentA({ practice: 'aircraft', item: row.item, insulationC: 150, ambientC: numberIn(row.condition) })
      expect(ours).toBeLessThanOrEqual(row.value as number)
      expect(ours).toBeGreaterThan(0.5 * (row.value as number))
    })
})

it('multiplies as the worked example does', () => {
  // 47 · 0.91 · 0.6 by hand.
  expect(ampacityA({ tableA: 47, bundleFactor: 0.6, ambientFactor: 1, altitudeFactor: 0.91 })).toBeCloseTo(25.662, 9)
})
