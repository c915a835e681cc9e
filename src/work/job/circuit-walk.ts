import { runId } from '../../fitting/circuit-parts.ts'
import { silently } from '../../formula/working.ts'
import type { UnknownWire } from '../../rules/missing.ts'
import { wayTo } from '../../trade/circuit/guarding.ts'
import { openingTime } from '../../trade/circuit/protection-opening.ts'
import { styleOf } from '../../trade/circuit/protection-styles.ts'
import { type StatedFault, walkedAs } from '../../trade/circuit/switched-walk.ts'
import type { Guards } from './circuit-guards.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { type JobCircuit, namedRuns, protectorMark } from './circuit-wiring.ts'
import { fedVolts } from './fed-volts.ts'
import { unseenLack } from './in-position.ts'
import { type UnsaidPlace, unsaidPlaces } from './unsaid-places.ts'
import { offWalks, perhapsTogether, walkedPositions } from './walked-positions.ts'
import { figureLack, type Lack } from './wire-lacks.ts'

export interface CircuitWalk {
  readonly walk: readonly StatedFault[]
  /** The same in positions of which nobody tells whether they may be. */
  readonly perhaps: readonly StatedFault[]
  /** Wires whose capacity is known, and those whose is not. */
  readonly known: number
  readonly unknown: readonly UnknownWire[]
  /** Fuses and breakers of which nobody knows when they open. */
  readonly silent: readonly string[]
  /** Fuses and breakers of which nobody said at which end of their run they sit. */
  readonly unsaid: readonly UnsaidPlace[]
}

/** Every single fault of a circuit, worst first, at the nominal. A short before every protector, but no further from the source than one may stand, is none of them. */
export function circuitWalk(judged: CircuitJudged): CircuitWalk {
  const { circuit, fit, guards } = judged
  const { wiring, unguarded, protectors, bare } = guards
  const points = new Set([...wiring.runs, ...wiring.loads].flatMap(({ from, to }) => [from, to]))
  const { cranking } = circuit
  const roles = {
    threads: namedRuns(circuit).flatMap(({ id, run }) => (run.threads === 'yes' ? [id] : [])),
    points: [
      ...[...points].filter(point => !bare.points.has(point) || bare.far.has(point) || unguarded.points.has(point)),
      ...bare.cuts.map(({ point }) => point)
    ],
    cuts: bare.cuts,
    fedV: fedVolts(judged),
    cranking:
      cranking === null
        ? null
        : {
            currentA: cranking.current.value,
            at: cranking.at,
            straps: wayTo({ bus: wiring.ground, runs: wiring.runs }, cranking.at).slice(-1)
          }
  }
  return silently(() => {
    const positions = walkedPositions(judged, roles)
    const known = new Set(positions.flatMap(({ given }) => given.capacities.map(({ id }) => id)))
    const unknown = fit.runs.flatMap(({ id, parts }) =>
      parts.some(({ of }) => of === 'wire') && !known.has(runId(id)) ? [{ id, lacks: lackOf(judged, id) }] : []
    )
    const walk = [...positions.flatMap(({ state, given }) => walkedAs(state, given)), ...offWalks(circuit, positions)]
    const perhaps = perhapsTogether(judged, roles).flatMap(({ state, given }) => walkedAs(state, given))
    return {
      walk,
      perhaps,
      known: known.size,
      unknown,
      silent: silentOf(circuit, protectors),
      unsaid: unsaidPlaces(circuit, guards, fit.runs)
    }
  })
}

/** Why nobody knows whether a wire burns. */
function lackOf(judged: CircuitJudged, id: string): Lack {
  return figureLack(judged, id) ?? unseenLack(judged, id) ?? { says: `no current gets to ${id}`, change: 'draw what joins it to a source' }
}

function silentOf({ runs }: JobCircuit, protectors: Guards['protectors']): readonly string[] {
  return runs.flatMap(({ through }) =>
    through.flatMap(item => {
      const name = protectorMark(item)
      const rated = protectors.find(one => one.name === name)
      const told =
        rated !== undefined && openingTime(styleOf(rated.style), { currentA: rated.ratingA.value, ratingA: rated.ratingA.value }) !== null
      return name === null || told ? [] : [name]
    })
  )
}
