// table: outside source. How warm a wire gets where it lies, and the pairs of wire and protector that a published guide allows; source and label beside each.
import { describe, expect, it } from 'vitest'
import type { Plain } from '../../src/formula/given.ts'
import { type AmpacityGiven, ampacity } from '../../src/trade/circuit/ampacity.ts'
import { reachA } from '../../src/trade/circuit/ampacity-reach.ts'
import { thinFactor } from '../../src/trade/circuit/ampacity-thin.ts'
import { styleOf } from '../../src/trade/circuit/protection-styles.ts'
import { judgeJob } from '../../src/work/job/judge-job.ts'
import { jsonOf } from '../commands/json-of.ts'
import { PROTECTION_ROWS } from './rows/protection.ts'

function reach(changed: Partial<Plain<AmpacityGiven>>): number {
  const alone = { practice: 'aircraft', conductor: { standard: 'awg', awg: 14 }, altitudeM: 0, bundleCount: 1 } as const
  const found = ampacity({ ...alone, insulationC: 200, ambientC: 50, ...changed })
  if (found.kind === 'no figure') throw new Error(found.says)
  return found.reachA
}

// Source: 33 CFR 183.425 note 1, engine space of 50 °C against 30 °C (105 °C read-secondary, the others memory), to two digits, cut or rounded.
it.each([
  [60, 0.58],
  [75, 0.75],
  [80, 0.78],
  [90, 0.82],
  [105, 0.85],
  [125, 0.89]
])('a wire for %i °C in a place of 50 °C', (insulationC, factor) => {
  expect(Math.abs(reachA({ carriesA: 1, riseK: insulationC - 50, heldRiseK: insulationC - 30 }) - factor)).toBeLessThanOrEqual(0.01)
})

// Source: ISO 10133 table A.1, one cable in open air at 30 °C, 105 °C insulation, whole amperes: 1 mm² 20 A, 0.75 mm² 16 A (memory).
it('a wire of 0.75 mm² beside one of 1 mm²', () => {
  expect(Math.abs(20 * thinFactor({ areaMm2: 0.75 }) - 16)).toBeLessThanOrEqual(0.5)
})

// Source: FAA AC 43.13-1B figure 11-4a, one wire in free air, read off the curve: AWG 14 47 A at a rise of 150 K (read-secondary), AWG 20 21.5 A and AWG 22 16.2 A at 140 K (memory).
it.each([
  [14, 47, 150],
  [20, 21.5, 140],
  [22, 16.2, 140]
])('AWG %i is never taken for cooler than the curve of free air has it', (awg, curveA, riseK) => {
  const ours = reach({ conductor: { standard: 'awg', awg }, ambientC: 200 - riseK })
  expect(ours).toBeLessThanOrEqual(curveA)
  expect(ours).toBeGreaterThan(0.6 * curveA)
})

// Source: FAA AC 43.13-1B table 11-3 (read-secondary). Lying by itself, and as the table says (its basis from memory).
const PAIRS = PROTECTION_ROWS.filter(({ quantity, value }) => /^largest (fuse|circuit breaker)/.test(quantity) && typeof value === 'number')
const STYLES = { fuse: ['blade', 'glass'], breaker: ['thermal', 'iec-60898'] } as const
const LYING = [
  { says: 'by itself', bundle: 1, ambient: 20, altitude: 0 },
  { says: 'by itself in a warm place', bundle: 1, ambient: 57, altitude: 0 },
  { says: 'as the table says', bundle: 15, ambient: 57, altitude: 9144 }
]

it('has all rows of the table', () => {
  expect(PAIRS.length).toBeGreaterThanOrEqual(20)
})

describe.each(LYING)('pairs of table 11-3, wire $says', ({ bundle, ambient, altitude }) => {
  it.each(PAIRS)('$quantity of $item: $value A', async ({ quantity, item, value }) => {
    const size = /AWG \d+/.exec(item)![0]
    const styles = quantity.includes('fuse') ? STYLES.fuse : STYLES.breaker
    for (const style of styles) {
      const lies = `--bundle ${bundle} --ambient "${ambient} °C" --altitude "${altitude} m"`
      const quick = await jsonOf(
        `protect --practice aircraft --current 1A --wire "${size}" --insulation "150 °C" --rating "${value} A" --style ${style} ${lies}`
      )
      expect(quick.findings.find(({ rule }) => rule === 'protect/over-wire')).toHaveProperty('verdict', 'caution')
      expect(jobVerdict(`${size}`, `${value} A`, style, { bundle, ambient, altitude })).toBe('caution')
    }
  })
})

function jobVerdict(size: string, rating: string, style: Parameters<typeof styleOf>[0], lies: Omit<(typeof LYING)[number], 'says'>) {
  const wire = `wire: { size: ${size}, length: 1 m, ambient: ${lies.ambient} °C, insulation: 150 °C, bundle: ${lies.bundle} }`
  const through = `through: [{ ${styleOf(style).kind}: P1, rating: ${rating}, style: ${style}, at: 25 °C, resistance: 5 mohm, along: 0 m }]`
  const { errors, findings } = judgeJob(
    'job.yaml',
    `
fettle: 1
job: { title: pair, practice: aircraft }
circuit:
  source: { bus: 28 V, low: 28 V, high: 28 V, resistance: 40 mohm, ground: frame }
  altitude: ${lies.altitude} m
  runs:
    - { from: bus, to: h+, ${wire}, ${through} }
    - { from: h-, to: frame, ${wire} }
  loads: [{ load: lamp, power: 28 W, voltage: 28 V, from: h+, to: h- }]
`
  )
  expect(errors).toEqual([])
  return findings.find(({ rule }) => rule === 'protect/over-wire')!.verdict
}
