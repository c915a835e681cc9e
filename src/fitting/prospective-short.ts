import type { Plain } from '../formula/given.ts'
import type { CircuitFit, FittedProtector, Run } from './circuit.ts'
import { wireM, wireOf, wireOhm } from './circuit-parts.ts'
import type { ShortedCircuit } from './shorted-circuit.ts'

/**
 * What a short right beside a protector would drive if a conductor without resistance stood in its place: breaking capacities are stated
 * for that. The greatest of both sides, as there may be a source on both. Of its own run only the wire before it counts, where that is
 * known. Null where nothing flows through it.
 */
export function prospectiveA(
  { ground, runs, closedTogether }: Plain<CircuitFit>,
  fitted: Plain<Pick<FittedProtector, 'run' | 'alongM'>>,
  asItIs: ShortedCircuit
): number | null {
  const run = runs.find(({ id }) => id === fitted.run)!
  const found = (['from', 'to'] as const).flatMap(end => {
    const beforeOhm = aheadOhm(run, end === 'to' ? fitted.alongM : behindM(run, fitted.alongM))
    return closedTogether.flatMap(opened => asItIs.throughA({ from: run[end], to: ground, run: run.id, beforeOhm, opened }) ?? [])
  })
  return found.length === 0 ? null : Math.max(...found)
}

function behindM(run: Plain<Run>, alongM: number | null): number | null {
  const wired = wireOf(run)
  return alongM === null ? null : Math.max(0, (wired === undefined ? 0 : wireM(wired)) - alongM)
}

function aheadOhm(run: Plain<Run>, lengthM: number | null): number {
  const wired = wireOf(run)
  if (wired === undefined || lengthM === null) return 0
  const { conductor, strandFactor, conductorC } = wired
  return wireOhm({ conductor, strandFactor, lengthM, beginsM: null }, conductorC)
}
