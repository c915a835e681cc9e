// example: a second battery that is not as drawn, by readings worked by hand: three branches between two points (Millman's theorem)
import { expect, it } from 'vitest'
import { documentOf } from '../../../src/report/json.ts'
import { proveJob } from '../../../src/work/prove/prove-job.ts'
import { BENCH } from './invented.ts'

/** Invented: a generator and a second battery feed one panel, and that one heater. */
const JOB = `
fettle: 1
job: { title: two sources }
circuit:
  source: { bus: 14.2 V, low: 13.8 V, high: 14.6 V, resistance: 30 mohm, ground: frame }
  other-sources: [{ what: second battery, voltage: 12.8 V, resistance: 20 mohm, from: bat2-, to: bat2+ }]
  runs:
    - { from: bus, to: panel, through: [{ what: fuse F1, resistance: 6 mohm ± 10 % }] }
    - { from: bat2+, to: panel, through: [{ what: fuse F2, resistance: 8 mohm ± 10 % }] }
    - { from: bat2-, to: frame, bond: 2 mohm ± 0.2 mohm }
    - { from: panel, to: heat+, through: [{ what: switch S1, resistance: 20 mohm ± 10 % }] }
    - { from: heat-, to: frame, bond: 8 mohm ± 0.8 mohm }
  loads: [{ load: air heater, resistance: 1.2 ohm ± 5 %, from: heat+, to: heat- }]
${BENCH}`

interface Battery {
  readonly voltageV: number
  readonly insideOhm: number
}

/** What a meter shows with the generator at 14.3 V and the battery as it is. */
function readingsWith({ voltageV, insideOhm }: Battery, generatorV = 14.3): readonly string[] {
  const [generatorOhm, batteryOhm, heaterOhm] = [0.03 + 0.006, insideOhm + 0.008 + 0.002, 0.02 + 1.2 + 0.008]
  const panelV = (generatorV / generatorOhm + voltageV / batteryOhm) / (1 / generatorOhm + 1 / batteryOhm + 1 / heaterOhm)
  const [generatorA, batteryA, heaterA] = [(generatorV - panelV) / generatorOhm, (voltageV - panelV) / batteryOhm, panelV / heaterOhm]
  return [
    `bus TO frame=${(generatorV - 0.03 * generatorA).toFixed(2)} V`,
    `heat+ TO heat-=${(1.2 * heaterA).toFixed(2)} V`,
    `bus TO panel=${(6 * generatorA).toFixed(1)} mV`,
    `bat2+ TO panel=${(8 * batteryA).toFixed(1)} mV`,
    `bat2- TO frame=${(-2 * batteryA).toFixed(1)} mV`,
    `panel TO heat+=${(20 * heaterA).toFixed(1)} mV`,
    `bus TO panel=${generatorA.toFixed(2)} A`
  ]
}

interface Document {
  readonly results: { readonly [id: string]: { readonly value: number | string } }
  readonly tables: { readonly faults: readonly { readonly [key: string]: unknown }[] }
}

function told(typed: readonly string[]): Document {
  const { answer, locate } = proveJob({ file: 'job.yaml', text: JOB, typed, working: false })
  expect(answer.errors ?? []).toEqual([])
  return JSON.parse(JSON.stringify(documentOf(answer, locate)))
}

it('as drawn it is in order', () => {
  const { tables } = told(readingsWith({ voltageV: 12.8, insideOhm: 0.02 }))
  expect(tables.faults[0]).toMatchObject({ fault: 'healthy' })
})

it.each([
  ['charged', 13.4, 'source-high', 'source high: second battery'],
  ['half empty', 12.2, 'source-low', 'source low: second battery'],
  ['flat', 11.5, 'source-low', 'source low: second battery'],
  ['shorted inside', 0.6, 'source-dead', 'source dead: second battery'],
  ['one of 24 V', 25.2, 'source-other', 'source of another voltage: second battery'],
  ['turned round', -12.8, 'source-turned', 'source the wrong way round: second battery']
])('%s, at %d V, it is what is named, with its voltage', (_, voltageV, kind, says) => {
  const { results, tables } = told(readingsWith({ voltageV, insideOhm: 0.02 }))
  expect(tables.faults[0]).toMatchObject({ fault: `${kind}@second battery`, what: says, unit: 'V' })
  expect(results['fault.probability']!.value).toBeGreaterThan(95)
  const [low, high] = [tables.faults[0]!['low'], tables.faults[0]!['high']].map(Number)
  expect(low).toBeLessThan(Math.abs(voltageV) * 1.005)
  expect(high).toBeGreaterThan(Math.abs(voltageV) * 0.995)
})

it('off, it carries nothing either way', () => {
  const { tables } = told(readingsWith({ voltageV: 12.8, insideOhm: 1e9 }))
  expect(tables.faults[0]).toMatchObject({ fault: 'open@source second battery', what: 'source off: second battery' })
})

it('the bus beside it is still told for itself', () => {
  const { tables } = told(readingsWith({ voltageV: 12.8, insideOhm: 0.02 }, 12.9))
  expect(tables.faults[0]).toMatchObject({ fault: 'source-low@bus', what: 'source low: bus' })
})
