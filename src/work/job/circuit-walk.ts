import { type FaultRoles, faultsGiven } from '../../fitting/circuit-faults.ts'
import { runId } from '../../fitting/circuit-parts.ts'
import { nominalPlain } from '../../formula/given.ts'
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
import type { FittedCircuit } from './circuit-fit-of.ts'
import type { Guards } from './circuit-guards.ts'
import { type JobCircuit, namedRuns, protectorMark } from './circuit-wiring.ts'
import { allOn } from './positions-of.ts'
import { figureLack } from './wire-lacks.ts'

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
export function circuitWalk(circuit: JobCircuit, fitted: FittedCircuit): CircuitWalk {
  const { fit, guards } = fitted
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
    const closed = closedGiven(circuit, fitted, roles)
    const { capacities } = closed?.given ?? given
    const unknown = fit.runs.flatMap(({ id, parts }) =>
      parts.some(({ of }) => of === 'wire') && !capacities.some(one => one.id === runId(id))
        ? [
            {
              id,
              lacks: figureLack({ circuit, fit }, id) ?? { says: `no current gets to ${id}`, change: 'draw what joins it to a source' }
            }
          ]
        : []
    )
    const walk = [...walkFaults(given), ...(closed === null ? [] : walkedAs(closed.state, closed.given)), ...offWalks(circuit, given)]
    return { walk, known: capacities.length, unknown, silent: silentOf(circuit, protectors), unsaid: bare.unsaid }
  })
}

/** With what is drawn open closed: some day it is. Nothing where that has no answer, which is a finding of its own. */
function closedGiven(
  circuit: JobCircuit,
  fitted: FittedCircuit,
  roles: FaultRoles
): { readonly state: string; readonly given: FaultGiven } | null {
  const on = allOn(circuit, fitted)
  if (on === null) return null
  const drawn = nominalPlain(fitted.fit)
  const runs = drawn.runs.map(run => ({ ...run, state: on.open.has(run.id) ? ('open' as const) : ('closed' as const) }))
  try {
    return { state: on.state, given: faultsGiven({ ...drawn, runs }, { ...roles, cranking: null }) }
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    return null
  }
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
