import type { Plain } from '../formula/given.ts'
import { switchNeeds } from '../trade/circuit/switch.ts'
import type { CircuitFit, FittedSwitch } from './circuit.ts'
import { assumedCold, type Fed, type SwitchedOn, switchedOn, unknownCold } from './switched-on.ts'

interface Around {
  readonly busV: number
  readonly loads: Plain<CircuitFit>['loads']
  readonly fed: Fed
  /** Of its run. */
  readonly runA: number
}

/** What a switch must be rated for: the current of its run is that of the loads behind it, each with its own factor and inrush. */
export function atSwitch({ name, loads: names }: FittedSwitch, { busV, loads, fed, runA }: Around) {
  const all = names.length > 0 ? names : loads.map(load => load.name)
  const behind = switchedOn(loads, all, fed)
  const shares = sharesOf(behind)
  const parts = behind.map(({ name: part, kind, inrush, ownRatio }, i) => ({
    name: part,
    load: kind,
    currentA: runA * shares[i]!,
    cold: inrush === null ? ({ by: 'not known', leastRatio: ownRatio ?? 0 } as const) : ({ by: 'told', ratio: inrush.times } as const)
  }))
  return {
    name,
    unknownCold: unknownCold(behind),
    assumedCold: assumedCold(behind),
    ...switchNeeds({ busV, loads: parts.length > 0 ? parts : [plainLoad(runA)], rating: null })
  }
}

/** Of a circuit without loads. */
function plainLoad(currentA: number) {
  return { name: 'the load', load: 'resistive', currentA, cold: { by: 'told', ratio: 1 } } as const
}

/** Where nothing flows, one as much as another. */
function sharesOf(loads: readonly SwitchedOn[]): readonly number[] {
  const allA = loads.reduce((sum, { steadyA }) => sum + steadyA, 0)
  return loads.map(({ steadyA }) => (allA > 0 ? steadyA / allA : 1 / loads.length))
}
