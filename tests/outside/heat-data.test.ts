// Table: the program's figures for joints, surfaces, metals, fuel and air against the collected rows they rest on, with their labels.
import { describe, expect, test } from 'vitest'
import { evaporationDropK, venturiDropK } from '../../src/trade/heat/air-cooling.ts'
import { ICING as ICING_CAUTION } from '../../src/trade/heat/cautions.ts'
import { CONTACTS, type ContactName } from '../../src/trade/heat/contact.ts'
import { EMISSIVITIES, type EmissivityName } from '../../src/trade/heat/emissivity.ts'
import type { Figure } from '../../src/trade/heat/figure.ts'
import { FUEL_AND_AIR } from '../../src/trade/heat/fuel.ts'
import { MATERIALS, type Material, type MaterialName } from '../../src/trade/heat/materials.ts'
import { leftOut } from '../outside-reporter.ts'
import { CONTACT, EMISSIVITY, MATERIAL } from './rows/thermal-data.ts'
import { ICING } from './rows/thermal-icing.ts'
import { allowance, figureOf, given, named, type ThermalRow } from './rows/thermal-row.ts'

/** `0.2..0.4` or one number. */
function ends(text: string): [number, number] {
  const [low, high] = text.split('..').map(Number)
  return [low!, high ?? low!]
}

function covers({ low, high, source }: Figure, row: ThermalRow, turned: (x: number) => number) {
  const [a, b] = ends(row.value)
    .map(turned)
    .toSorted((x, y) => x - y)
  expect(low).toBeLessThanOrEqual(a! * (1 + 1e-12))
  expect(high).toBeGreaterThanOrEqual(b! * (1 - 1e-12))
  expect(source.label).toBe(row.label)
}

describe('contact resistance', () => {
  const names: Readonly<Record<string, ContactName>> = {
    'rc-Al/Al 10 um rough, air-100kPa': 'aluminium-bare',
    'rc-Al/Al 10 um rough, silicone oil-100kPa': 'aluminium-oil',
    'rc-Al/Al with silicone grease-100kPa': 'aluminium-grease',
    'rc-brass/brass 15 um tin solder-': 'brass-soldered',
    'rc-chip/Al 0.02 mm epoxy-': 'epoxy',
    'hc-aluminium/aluminium': 'aluminium-pressed',
    'hc-copper/copper': 'copper-pressed'
  }
  test.each(CONTACT)('$id', row => {
    const turned = row.id.startsWith('hc-') ? (h: number) => 1 / h : (r: number) => r * 1e-4
    covers(CONTACTS[names[row.id]!].contactM2KPerW, row, turned)
  })
})

describe('emissivity', () => {
  const names: Readonly<Record<string, EmissivityName>> = {
    'em-aluminium, as-cast and blast-cleaned-70 C, 8-14 um': 'aluminium-as-cast',
    'em-aluminium, as-cast and blast-cleaned-70 C, 2-5 um': 'aluminium-as-cast',
    'em-aluminium, rough surface-20-50 C': 'aluminium-rough',
    'em-aluminium, strongly oxidised-50-500 C': 'aluminium-strongly-oxidised',
    'em-aluminium plate as received-100 C': 'aluminium-plate',
    'em-lacquer, matt black-100 C': 'black-lacquer',
    'em-lacquer, heat-resistant-100 C': 'heat-resistant-lacquer',
    'em-aluminium paint on rough surface-20 C': 'aluminium-paint',
    'em-cast iron casting-50 C': 'cast-iron',
    'em-iron rusty red-20 C': 'iron-rusty',
    'em-brass dull tarnished-20-350 C': 'brass-tarnished',
    'em-copper oxidised-50 C': 'copper-oxidised',
    'em2-aluminium oxidised': 'aluminium-oxidised',
    'em2-cast iron oxidised': 'cast-iron-oxidised'
  }
  test.each(EMISSIVITY)('$id', row => covers(EMISSIVITIES[names[row.id]!], row, x => x))
})

describe('metals', () => {
  const names: Readonly<Record<string, readonly MaterialName[]>> = {
    'A380 die-cast aluminium': ['a380'],
    '380 die-cast aluminium': ['380'],
    '380 / A380': ['380', 'a380'],
    'A356-T6': ['a356'],
    '356.0': ['a356'],
    'zinc alloy 3': ['zinc-alloy-3'],
    'AZ91D magnesium': ['az91d'],
    AZ91D: ['az91d'],
    'grey iron': ['grey-iron'],
    'steel 1020': ['steel-1020'],
    'stainless 316': ['stainless-316'],
    'brass C36000': ['brass-c36000'],
    'copper C11000': ['copper-c11000'],
    copper: ['copper-c11000']
  }
  function figure(material: Material, row: ThermalRow): Figure | null {
    if (row.quantity.startsWith('specific heat')) return material.heatJPerKgK
    return row.quantity.startsWith('conductivity') ? material.conductivityWPerMK : material.densityKgPerM3
  }
  test.each(MATERIAL)('$id $quantity of $conditions', row => {
    const scale = row.quantity === 'specific gravity' ? 1000 : 1
    for (const name of names[row.conditions]!) {
      const found = figure(MATERIALS[name], row)!
      expect(found.value).toBeCloseTo(Number(row.value) * scale, 9)
      expect(found.source.label).toBe(row.label)
    }
  })
})

// Callister, appendix B, for stainless 316; physics tables for aluminium; the further figures of several tables for the spans (all memory).
test.each([
  ['stainless-316', 'heatJPerKgK', [500, 500, 500]],
  ['stainless-316', 'densityKgPerM3', [8000, 8000, 8000]],
  ['aluminium', 'heatJPerKgK', [900, 900, 900]],
  ['aluminium', 'densityKgPerM3', [2700, 2700, 2700]],
  ['grey-iron', 'heatJPerKgK', [490, 544, 544]],
  ['grey-iron', 'densityKgPerM3', [7300, 7300, 7500]],
  ['az91d', 'conductivityWPerMK', [51, 72.7, 78]]
] as const)('%s %s', (name, quantity, figures) => {
  const { low, value, high } = MATERIALS[name][quantity]!
  expect([low, value, high]).toEqual(figures)
})

describe('air cooled on its way', () => {
  test.each(named(ICING, 'evap-'))('$id', row => {
    const drop = evaporationDropK({
      fuelAirRatio: 1 / given(row, 'A/F'),
      latentJPerKg: given(row, 'L') * 1000,
      airHeatJPerKgK: FUEL_AND_AIR.airHeatJPerKgK.value,
      fuelHeatJPerKgK: FUEL_AND_AIR.gasolineHeatJPerKgK.value
    })
    expect(Math.abs(drop - Number(row.value))).toBeLessThanOrEqual(allowance(row))
  })
  test.each(named(ICING, 'venturi-'))('$id', row => {
    const drop = venturiDropK({ throatMPerS: given(row, 'velocity'), airHeatJPerKgK: given(row, 'cp') })
    expect(Math.abs(drop - Number(row.value))).toBeLessThanOrEqual(allowance(row))
  })
  // Btu/lb to J/kg, exact: 1 Btu/lb (International Table) is 2326 J/kg.
  test('latent heat of gasoline', () => {
    expect(FUEL_AND_AIR.gasolineLatentJPerKg.value).toBeCloseTo(figureOf(ICING, 'gas-lv') * 2326, -3)
    // Engine texts print 305 to 350 kJ/kg (memory).
    expect(FUEL_AND_AIR.gasolineLatentJPerKg).toMatchObject({ low: 305e3, high: 350e3 })
  })
  // 1 Btu/h is 0.293071 W.
  test('the heat that the caution names', () => {
    expect(ICING_CAUTION).toContain(`${Math.round(figureOf(ICING, 'tn1790-heat') * 0.293071)} W`)
  })
})

test('a row left out is not also checked', () => {
  const lines = leftOut().filter(line => /\((mat-|exp-|rc-|tn1790)/.test(line))
  const ids = lines.flatMap(line => /\((.+)\):/.exec(line)![1]!.split('; '))
  expect(ids.length).toBeGreaterThan(20)
  expect([CONTACT, EMISSIVITY, MATERIAL, ICING].flat().filter(({ id }) => ids.includes(id))).toEqual([])
})
