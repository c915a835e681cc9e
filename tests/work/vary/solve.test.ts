// table: the value that solve finds, against a divider of two resistances worked by hand
import { describe, expect, it } from 'vitest'
import { readJob } from '../../../src/job/read-job.ts'
import { solve } from '../../../src/work/vary/solve.ts'
import { variedField } from '../../../src/work/vary/varied-field.ts'
import { HEATER_OHM, OHM_PER_M, WIRED } from '../plain-jobs.ts'

const read = readJob('x.yaml', WIRED)
const field = (path: string) => {
  const found = variedField(read, path)
  if (!found.ok) throw new Error(found.fault.found)
  return found.value
}
const rules = (id: string) => id === 'drop/too-much'
const length = field('circuit.runs.0.wire.length')
const base = {
  steps: 50,
  wanted: { rules },
  fits: ({ verdict }: { readonly verdict: string | null }) => verdict !== null && verdict !== 'fail'
}

/** 3 % of the bus is lost where the wire has 3/97 of the resistance of the heater. */
const LONGEST_M = (HEATER_OHM * 3) / 97 / OHM_PER_M

describe('the longest wire that loses no more than 3 %', () => {
  it('is found to the last digit that makes a difference', () => {
    const { value, beyond } = solve(read, length, { ...base, from: 1, to: 100, want: 'greatest' })
    expect(Math.abs(value! / LONGEST_M - 1)).toBeLessThan(1e-8)
    expect(beyond?.verdict).toBe('fail')
  })

  it('is told by what fails a hundredth of a step beyond, not by rounding at the edge', () => {
    // 50 steps from 1 to 100 m.
    const ohm = (LONGEST_M + 99 / 50 / 100) * OHM_PER_M
    const [finding] = solve(read, length, { ...base, from: 1, to: 100, want: 'greatest' }).beyond!.findings
    expect(finding?.value).toBeCloseTo((100 * ohm) / (ohm + HEATER_OHM), 8)
    expect(finding!.margin).toBeLessThan(-1e-4)
  })

  it('whatever the steps', () => {
    for (const steps of [1, 2, 7, 300]) {
      const { value } = solve(read, length, { ...base, steps, from: 1, to: 100, want: 'greatest' })
      expect(Math.abs(value! / LONGEST_M - 1)).toBeLessThan(1e-8)
    }
  })

  it('is the end of the range where that fits', () => {
    expect(solve(read, length, { ...base, from: 1, to: 40, want: 'greatest' })).toMatchObject({ value: 40, beyond: null })
    expect(solve(read, length, { ...base, from: 1, to: 100, want: 'least' })).toMatchObject({ value: 1, beyond: null })
  })

  it('is none where nothing fits', () => {
    expect(solve(read, length, { ...base, from: 60, to: 100, want: 'greatest' }).value).toBeNull()
  })
})

it('the least bus for a power follows the square of the voltage', () => {
  // The drop as a share does not move with the bus: it fits everywhere.
  const bus = field('circuit.source.bus')
  expect(solve(read, bus, { ...base, from: 10, to: 40, want: 'least' }).value).toBe(10)
})

it('a value outside the range of a formula does not fit', () => {
  const depth = field('holes.left.found.depth')
  const fits = ({
    errors,
    findings
  }: {
    readonly errors: readonly unknown[]
    readonly findings: readonly { readonly verdict: string }[]
  }) => errors.length === 0 && findings.every(({ verdict }) => verdict !== 'fail')
  const { value, beyond } = solve(read, depth, { ...base, wanted: {}, fits, from: 10, to: 2000, steps: 100, want: 'greatest' })
  expect(value).toBeGreaterThan(19)
  expect(beyond?.errors.length).toBeGreaterThan(0)
})
