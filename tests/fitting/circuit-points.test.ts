// property: what stands at the points of a circuit obeys the laws of Kirchhoff and agrees with what its loads are said to get

import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { circuitFit } from '../../src/fitting/circuit-fit.ts'
import { circuitPoints } from '../../src/fitting/circuit-points.ts'
import { plainOf } from '../../src/formula/given.ts'
import { readJob } from '../../src/job/read-job.ts'
import { circuitFitOf } from '../../src/work/job/circuit-fit-of.ts'

const { job } = readJob('x.yaml', readFileSync('examples/gearbox-preheater.yaml', 'utf8'))
const { plain } = plainOf(circuitFitOf(job, job.circuit!))
const { points, runs } = circuitPoints(plain)
const at = (name: string) => points.find(point => point.name === name)!.pointV

it('the 0 V node stands at nought and the bus highest', () => {
  expect(at('frame')).toBe(0)
  expect(Math.max(...points.map(({ pointV }) => pointV))).toBe(at('bus'))
})

it('the drop of each run is the difference of its ends', () => {
  for (const { from, to, runDropV } of runs) expect(runDropV).toBeCloseTo(at(from) - at(to), 12)
})

it('one loop carries one current, that of its load', () => {
  const { loads } = circuitFit(plain)
  for (const { runA } of runs) expect(runA).toBeCloseTo(loads[0]!.currentA, 9)
  expect(at('sump+') - at('sump-')).toBeCloseTo(loads[0]!.atV, 12)
})
