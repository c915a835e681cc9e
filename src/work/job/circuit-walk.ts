import type { CircuitFit } from '../../fitting/circuit.ts'
import { type FaultRoles, faultsGiven } from '../../fitting/circuit-faults.ts'
import { runId } from '../../fitting/circuit-parts.ts'
import { nominalPlain, type Plain } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { silently } from '../../formula/working.ts'
import { markedItem } from '../../job/circuit-names.ts'
import type { UnknownWire } from '../../rules/missing.ts'
import type { FaultGiven } from '../../trade/circuit/fault.ts'
import { walkFaults } from '../../trade/circuit/fault-walk.ts'
import { wayTo } from '../../trade/circuit/guarding.ts'
import { openingTime } from '../../trade/circuit/protection-opening.ts'
import { styleOf } from '../../trade/circuit/protection-styles.ts'
import { type StatedFault, walkedAs, walkWithout } from '../../trade/circuit/switched-walk.ts'
import type { Guards } from './circuit-guards.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { type JobCircuit, namedRuns, protectorMark } from './circuit-wiring.ts'
import { unseenLack } from './in-position.ts'
import type { Tried } from './positions-of.ts'
import { figureLack, type Lack } from './wire-lacks.ts'

export interface CircuitWalk {
  readonly walk: readonly StatedFault[]
  /** Wires whose capacity is known, and those whose is not. */
  readonly known: number
  readonly unknown: readonly UnknownWire[]
  /** Fuses and breakers of which nobody knows when they open. */
  readonly silent: readonly string[]
  /** Fuses and breakers of which nobody said at which end of their run they sit. */
  readonly unsaid: readonly string[]
}

/** Every single fault of a circuit, worst first, at the nominal. A short before every protector, but no further from the source than one may stand, is none of them. */
export function circuitWalk(judged: CircuitJudged): CircuitWalk {
  const { circuit, fit, guards, positions } = judged
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
    const drawn = nominalPlain(fit)
    const given = faultsGiven(drawn, roles)
    const switched = positions.tried.flatMap(one => switchedGiven(drawn, one, roles) ?? [])
    const known = new Set([given, ...switched.map(one => one.given)].flatMap(({ capacities }) => capacities.map(({ id }) => id)))
    const unknown = fit.runs.flatMap(({ id, parts }) =>
      parts.some(({ of }) => of === 'wire') && !known.has(runId(id)) ? [{ id, lacks: lackOf(judged, id) }] : []
    )
    const walk = [...walkFaults(given), ...switched.flatMap(one => walkedAs(one.state, one.given)), ...offWalks(circuit, given)]
    return { walk, known: known.size, unknown, silent: silentOf(circuit, protectors), unsaid: bare.unsaid }
  })
}

/** With its switches in another position. Nothing where that has no answer, which is a finding of its own. */
function switchedGiven(
  drawn: Plain<CircuitFit>,
  { state, open }: Tried,
  roles: FaultRoles
): { readonly state: string; readonly given: FaultGiven } | null {
  const runs = drawn.runs.map(run => ({ ...run, state: open.has(run.id) ? ('open' as const) : ('closed' as const) }))
  try {
    return { state, given: faultsGiven({ ...drawn, runs }, { ...roles, cranking: null }) }
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    return null
  }
}

/** Why nobody knows whether a wire burns. */
function lackOf(judged: CircuitJudged, id: string): Lack {
  return figureLack(judged, id) ?? unseenLack(judged, id) ?? { says: `no current gets to ${id}`, change: 'draw what joins it to a source' }
}

/** What is switched off stays off, whatever single fault comes. */
function offWalks(circuit: JobCircuit, given: FaultGiven): readonly StatedFault[] {
  const there = new Set(given.network.elements.map(({ id }) => id))
  return namedRuns(circuit).flatMap(({ id, run: { through } }) => {
    const switches = through.map(item => markedItem(item)).filter(({ does }) => does === 'switches')
    if (switches.length === 0 || !there.has(runId(id))) return []
    return walkWithout(given, runId(id), `${switches.map(({ what }) => what).join(' or ')} off`)
  })
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
