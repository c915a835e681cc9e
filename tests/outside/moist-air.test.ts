// Table: vapour pressures, dew and frost points and humidity ratios against published figures and reference programs.
import psychrolib from 'psychrolib'
import { beforeAll, describe, expect, test } from 'vitest'
import { dew } from '../../src/trade/heat/dew.ts'
import { humidityRatio } from '../../src/trade/heat/moist-air.ts'
import { iceSaturationPa, waterSaturationPa } from '../../src/trade/heat/saturation.ts'
import { DEW_FROST, VAPOUR_PRESSURE } from './rows/thermal-moist-air.ts'
import { allowance, given, named, type ThermalRow } from './rows/thermal-row.ts'

const PASCALS: Readonly<Record<string, number>> = { Pa: 1, hPa: 100, MPa: 1e6, mmHg: 133.322 }

function airC(row: ThermalRow): number {
  if (row.id === 'vp-tp') return 0.01 // the triple point
  return row.conditions.startsWith('T=') ? given(row, 'T') - 273.15 : given(row, 't')
}

function saturationPa(row: ThermalRow): number {
  const at = { airC: airC(row) }
  const ice = row.id.startsWith('vp-ashrae') ? at.airC < 0 : /(^| )ice/.test(row.quantity)
  return ice ? iceSaturationPa(at) : waterSaturationPa(at)
}

function moist(row: ThermalRow) {
  return dew({ airC: given(row, 't'), moisture: { by: 'humidity', humidityPercent: given(row, 'RH') }, altitudeM: 0, surfaceC: null })
}

describe('saturation vapour pressure', () => {
  const magnus = named(VAPOUR_PRESSURE, 'vp-magnus')
  test.each(magnus)('$id, same form', row => {
    expect(Math.abs(saturationPa(row) - Number(row.value))).toBeLessThanOrEqual(allowance(row))
  })
  // Other formulations and tables: the Magnus form strays by 0.1 to 0.3 % above -20 °C and by 0.6 % at -40 °C.
  test.each(VAPOUR_PRESSURE.filter(row => !magnus.includes(row)))('$id, other form', row => {
    const wantedPa = Number(row.value) * PASCALS[row.unit]!
    expect(Math.abs(saturationPa(row) / wantedPa - 1)).toBeLessThanOrEqual(airC(row) < -20 ? 0.006 : 0.005)
  })
})

describe('dew and frost point from humidity over water', () => {
  test.each(named(DEW_FROST, 'e-'))('$id vapour pressure within 0.5 %', row => {
    expect(Math.abs(moist(row).vapourPressurePa / Number(row.value) - 1)).toBeLessThanOrEqual(0.005)
  })
  test.each(named(DEW_FROST, 'dpm-'))('$id dew point, same form', row => {
    expect(Math.abs(moist(row).dewPointC - Number(row.value))).toBeLessThanOrEqual(allowance(row))
  })
  test.each(named(DEW_FROST, 'fpm-'))('$id frost point, same form', row => {
    expect(Math.abs(moist(row).frostPointC! - Number(row.value))).toBeLessThanOrEqual(allowance(row))
  })
  test.each(named(DEW_FROST, 'dp-'))('$id dew point, other form, within 0.05 K', row => {
    expect(Math.abs(moist(row).dewPointC - Number(row.value))).toBeLessThanOrEqual(0.05)
  })
  test.each(named(DEW_FROST, 'fp-'))('$id frost point, other form, within 0.05 K', row => {
    expect(Math.abs(moist(row).frostPointC! - Number(row.value))).toBeLessThanOrEqual(0.05)
  })
  // This program answers with the frost point below 0 °C: it is the point that governs.
  test.each(named(DEW_FROST, 'dpc-'))('$id governing point within 0.05 K', row => {
    expect(Math.abs(moist(row).pointC - Number(row.value))).toBeLessThanOrEqual(0.05)
  })
  test.each(named(DEW_FROST, 'dpp-').filter(row => given(row, 't') > 0))('$id dew point within 0.05 K', row => {
    expect(Math.abs(moist(row).dewPointC - Number(row.value))).toBeLessThanOrEqual(0.05)
  })
  // At and below 0 °C this program takes humidity over ice and answers with the frost point.
  test.each(named(DEW_FROST, 'dpp-').filter(row => given(row, 't') <= 0))('$id frost point within 0.05 K', row => {
    const at = { airC: given(row, 't') }
    const humidityPercent = (given(row, 'RH') * iceSaturationPa(at)) / waterSaturationPa(at)
    const { frostPointC, humidityOverIcePercent } = dew({
      ...at,
      moisture: { by: 'humidity', humidityPercent },
      altitudeM: 0,
      surfaceC: null
    })
    expect(humidityOverIcePercent).toBeCloseTo(given(row, 'RH'), 9)
    expect(Math.abs(frostPointC! - Number(row.value))).toBeLessThanOrEqual(0.05)
  })
})

describe('humidity ratio and wet bulb', () => {
  // The table counts the enhancement factor of moist air, 0.4 to 0.5 %, which is left out here.
  test.each(named(DEW_FROST, 'ws-'))('$id $conditions', row => {
    const vapourPressurePa = waterSaturationPa({ airC: given(row, 't') })
    const ratio = humidityRatio({ vapourPressurePa, pressurePa: given(row, 'p') })
    expect(Math.abs(ratio - Number(row.value))).toBeLessThanOrEqual(allowance(row))
  })
  // The reference is the wet bulb of adiabatic saturation; a ventilated wet bulb reads within 0.3 % humidity of it here.
  test.each(named(DEW_FROST, 'wb-'))('$id humidity from its wet bulb', row => {
    const { humidityPercent } = dew({
      airC: given(row, 't'),
      moisture: { by: 'wet-bulb', wetBulbC: Number(row.value) },
      altitudeM: 0,
      surfaceC: null
    })
    expect(Math.abs(humidityPercent - given(row, 'RH'))).toBeLessThanOrEqual(0.3)
  })
  test('a chart reading far from saturation', () => {
    const [ratio, point] = [...named(DEW_FROST, 'ash-ex1-W'), ...named(DEW_FROST, 'ash-ex1-Td')]
    const wetBulbC = Number(/wet bulb=(\d+)/.exec(ratio!.conditions)![1])
    const air = dew({ airC: given(ratio!, 't'), moisture: { by: 'wet-bulb', wetBulbC }, altitudeM: 0, surfaceC: null })
    expect(Math.abs(air.dewPointC - Number(point!.value))).toBeLessThanOrEqual(allowance(point!))
    // 20 K of depression: adiabatic saturation and a ventilated bulb part by 6 %, more than the chart's 0.0001.
    expect(Math.abs(air.humidityRatio - Number(ratio!.value))).toBeLessThanOrEqual(0.0005)
  })
})

// PsychroLib 2.5.0 (npm psychrolib 1.1.1): ice at and below 0 °C, water above.
describe('reference program for moist air', () => {
  beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI))

  test.each([-20, -10, -5, 0, 5, 15, 25, 40, 50])('saturation at %d °C within 0.35 %', at => {
    const ours = at <= 0 ? iceSaturationPa({ airC: at }) : waterSaturationPa({ airC: at })
    expect(Math.abs(ours / psychrolib.GetSatVapPres(at) - 1)).toBeLessThanOrEqual(0.0035)
  })
  test.each([
    [25, 80],
    [20, 50],
    [10, 70],
    [35, 60]
  ])('dew point at %d °C and %d %% within 0.05 K', (at, humidityPercent) => {
    const { dewPointC } = dew({ airC: at, moisture: { by: 'humidity', humidityPercent }, altitudeM: 0, surfaceC: null })
    expect(Math.abs(dewPointC - psychrolib.GetTDewPointFromRelHum(at, humidityPercent / 100))).toBeLessThanOrEqual(0.05)
  })
  test.each([
    [-15, 70],
    [-5, 90],
    [0, 60]
  ])('frost point at %d °C and %d %% over ice within 0.05 K', (at, overIce) => {
    const humidityPercent = (overIce * iceSaturationPa({ airC: at })) / waterSaturationPa({ airC: at })
    const { frostPointC } = dew({ airC: at, moisture: { by: 'humidity', humidityPercent }, altitudeM: 0, surfaceC: null })
    expect(Math.abs(frostPointC! - psychrolib.GetTDewPointFromRelHum(at, overIce / 100))).toBeLessThanOrEqual(0.05)
  })
  test.each([0, 1500, 3000])('humidity from a wet bulb at %d m within 0.5 %% humidity', altitudeM => {
    const pressurePa = psychrolib.GetStandardAtmPressure(altitudeM)
    const wetBulbC = psychrolib.GetTWetBulbFromRelHum(18, 0.65, pressurePa)
    const air = dew({ airC: 18, moisture: { by: 'wet-bulb', wetBulbC }, altitudeM, surfaceC: null })
    expect(Math.abs(air.humidityPercent - 65)).toBeLessThanOrEqual(0.5)
    expect(Math.abs(air.humidityRatio / psychrolib.GetHumRatioFromVapPres(air.vapourPressurePa, pressurePa) - 1)).toBeLessThanOrEqual(1e-4)
  })
  test('humidity from an iced bulb within 0.5 % humidity', () => {
    const overIce = 0.8
    const wetBulbC = psychrolib.GetTWetBulbFromRelHum(-4, overIce, 101325)
    const air = dew({ airC: -4, moisture: { by: 'wet-bulb', wetBulbC }, altitudeM: 0, surfaceC: null })
    expect(Math.abs(air.humidityOverIcePercent! - 100 * overIce)).toBeLessThanOrEqual(0.5)
  })
})
