// property: readings as expected raise no suspicion; a better meter never widens a band; probabilities sum to one
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { pointText } from '../../../src/trade/proof/drawn.ts'
import type { TypedReading } from '../../../src/trade/proof/read-reading.ts'
import { proofOf } from '../../../src/work/prove/proof-of.ts'
import { proofFindings } from '../../../src/work/prove/prove-findings.ts'
import type { NamedPoint } from '../../../src/work/prove/test-points.ts'
import { BENCH, jobOf, jobText } from './invented.ts'

const { job, circuit } = jobOf(jobText(BENCH))
const blank = proofOf(job, circuit, [])
const EVERY = blank.points.map((_, i) => i)

function typed({ takes, red, black, passingA }: NamedPoint, value: number): TypedReading {
  return { takes, red, black, passingA, amount: { value, low: value, high: value, text: '' }, text: '' }
}

function taken(indexes: readonly number[], change: (value: number, i: number) => number = value => value) {
  return proofOf(
    job,
    circuit,
    indexes.map(i => typed(blank.points[i]!, change(blank.expected[i]!.value, i)))
  )
}

describe('what should be measured', () => {
  const names = blank.points.map(point => `${point.takes} ${pointText(point)}${point.passingA === null ? '' : ' @'}`)

  it.each([
    ['the bus', 'volts bus to chassis'],
    ['every run, return and ground', 'volts block to chassis'],
    ['every load', 'volts right+ to right-'],
    ['the feed', 'amps bus to panel'],
    ['the current of every load', 'amps left+ to left-'],
    ['every heater cold', 'ohms right+ to right-'],
    ['every ground at a known current', 'volts left- to chassis @']
  ])('%s', (_, name) => expect(names).toContain(name))

  it('each once', () => expect(new Set(names).size).toBe(names.length))

  it('each band holds what is expected', () => {
    for (const { value, low, high } of blank.expected) {
      expect(low).toBeLessThan(value)
      expect(high).toBeGreaterThan(value)
    }
  })
})

it('readings as expected raise no suspicion, whichever were taken', () => {
  fc.assert(
    fc.property(fc.subarray([...EVERY], { minLength: 1 }), indexes => {
      const proof = taken(indexes)
      const { loops, readings, fault } = proofFindings(proof)
      expect(readings.map(({ verdict }) => verdict)).toEqual(indexes.map(() => 'pass'))
      expect(loops.map(({ verdict }) => verdict)).not.toContain('fail')
      // A few readings leave faults that they cannot see: no suspicion, and no pass yet.
      expect(['pass', 'caution']).toContain(fault.verdict)
      expect(proof.diagnosis!.suspects[0]!.members.map(({ fault: { kind } }) => kind)).toContain('healthy')
      expect(proof.diagnosis!.suspects.reduce((sum, { probabilityRatio }) => sum + probabilityRatio, 0)).toBeCloseTo(1, 9)
      expect(proof.two).toBeNull()
    }),
    { numRuns: 6 }
  )
})

it('all readings as expected clear the circuit', () => {
  expect(proofFindings(taken([...EVERY])).fault.verdict).toBe('pass')
})

it('a better meter never widens a band', () => {
  const accuracy = fc.record({ percent: fc.double({ min: 0, max: 3, noNaN: true }), digits: fc.nat(9) })
  const bandsBy = ({ percent, digits }: { percent: number; digits: number }) => {
    const meter = `{ percent: ${percent.toFixed(4)}, digits: ${digits} }`
    const read = jobOf(jobText(`proof: { meter: { volts: ${meter}, amps: ${meter}, ohms: ${meter} } }\n`))
    return proofOf(read.job, read.circuit, []).expected
  }
  fc.assert(
    fc.property(accuracy, accuracy, (a, b) => {
      const better = bandsBy({ percent: Math.min(a.percent, b.percent), digits: Math.min(a.digits, b.digits) })
      const worse = bandsBy({ percent: Math.max(a.percent, b.percent), digits: Math.max(a.digits, b.digits) })
      for (const [i, { low, high }] of better.entries()) {
        expect(low).toBeGreaterThanOrEqual(worse[i]!.low - 1e-12)
        expect(high).toBeLessThanOrEqual(worse[i]!.high + 1e-12)
      }
    }),
    { numRuns: 4 }
  )
})

describe('where the bus was measured', () => {
  const at = (name: string) => blank.points.findIndex(point => `${point.takes} ${pointText(point)}` === name)
  const [bus, left] = [at('volts bus to chassis'), at('volts left+ to left-')]

  it('the others are held against it, and it against what the source may give', () => {
    const proof = taken([bus, left])
    expect(proof.bands[0]).toEqual(blank.expected[bus])
    expect(proof.bands[1]!.high - proof.bands[1]!.low).toBeLessThan(0.2 * (blank.expected[left]!.high - blank.expected[left]!.low))
  })

  it('a bus that can be none is not believed', () => {
    const proof = taken([bus, left], (value, i) => (i === bus ? value / 10 : value))
    expect(proof.bands[1]!.low).toBeLessThan(24)
    expect(proof.diagnosis!.suspects[0]!.members.map(({ fault }) => fault.id)).toEqual(['misread@volts bus to chassis'])
  })

  it('with the leads the other way round as well', () => {
    const reading = { ...typed(blank.points[bus]!, -27.3), red: 'chassis', black: 'bus' }
    const proof = proofOf(job, circuit, [reading, typed(blank.points[left]!, 26.9)])
    expect(proof.bands[1]!.low).toBeGreaterThan(26)
  })
})

describe('what to measure next', () => {
  it('is never what was measured, whichever way round', () => {
    const half = EVERY.filter(i => i % 2 === 0)
    const turned = half.map(i => {
      const point = blank.points[i]!
      return point.takes === 'volts'
        ? { ...typed(point, -blank.expected[i]!.value), red: point.black, black: point.red }
        : typed(point, blank.expected[i]!.value)
    })
    const { next } = proofOf(job, circuit, turned)
    const asked = next.map(({ point }) => `${point.takes} ${pointText(point)} ${point.passingA}`)
    for (const i of half) {
      const point = blank.points[i]!
      expect(asked).not.toContain(`${point.takes} ${pointText(point)} ${point.passingA}`)
    }
  })

  it('nothing is left when all was measured', () => expect(taken(EVERY).next).toEqual([]))
})
