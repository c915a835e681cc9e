import type { FittedProtector } from '../../fitting/circuit.ts'
import type { Finding } from '../../rules/finding.ts'
import { MOVE } from '../../rules/in-return.ts'
import { doubted } from '../../rules/judge.ts'
import type { Unsure } from '../../rules/missing.ts'
import { farEndShort } from '../../rules/protect/far-end-short.ts'
import { asked } from '../../rules/rule.ts'
import { type RatedProtector, reliesOn, toldOf } from './circuit-guards.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { namedRuns, protectorMark } from './circuit-wiring.ts'
import { isIn, wireIn } from './fitted-protector.ts'
import { opensBefore } from './fitted-shorts.ts'
import { unseenLack } from './in-position.ts'
import { steadyOf } from './steady-of.ts'
import { figureLack } from './wire-lacks.ts'

/** Of a protector that loads come back through: those of them that have none in their feed. Null of every other. */
export function returnOf({ circuit, guards }: CircuitJudged, name: string): readonly string[] | null {
  const id = namedRuns(circuit).find(({ run }) => run.through.some(item => protectorMark(item) === name))!.id
  const { side, loads } = guards.guarding.get(id)!
  if (side !== 'return' || loads.length === 0) return null
  return loads.filter(load => (guards.groups.loads.get(load)?.protectors.length ?? 0) === 0)
}

/** The wire that a protector is held against, with what else holds it; and why nothing is known of it. */
export function heldBy(judged: CircuitJudged, { holds }: FittedProtector) {
  const { run, unknown, backedBy } = holds
  const none: Unsure = { says: 'no wire is drawn behind it', change: 'draw the wire of the runs behind it' }
  return {
    holds: { run, unknown, backedBy, beside: holds.beside.map(({ name, ratingA }) => `${name} of ${ratingA.value} A`) },
    lacks: run === null ? none : figureLack(judged, run)
  }
}

export function noLoads({ name, loads }: FittedProtector): Unsure | null {
  if (loads.length > 0) return null
  return {
    says: `no load hangs on ${name} alone: how an inrush parts between the ways that lead to a load is not worked out`,
    change: 'judge the job with the other ways taken out'
  }
}

/** Why no short drives a current through a protector. */
export function noShort(judged: CircuitJudged, { name, run }: Pick<RatedProtector, 'name' | 'run'>): Unsure {
  if (returnOf(judged, name) !== null) return { says: `${name} stands in the return: a short to ground goes round it`, change: MOVE }
  const before = opensBefore(judged.guards, run, name)
  if (before.length > 0 && !isNeeded(judged, name))
    return {
      says: `${before.join(' and ')} in the same way lets no more through than ${name}, and opens such a short`,
      change: `leave ${name} out, or take one that is smaller`
    }
  const unseen = unseenLack(judged, run)
  if (unseen !== null) return unseen
  const { from, to } = judged.guards.wiring.runs.find(({ id }) => id === run)!
  if ([from, to].some(end => judged.guards.bare.limited.has(end)))
    return {
      says: `what comes through ${name} limits itself to what its lead carries: no short has to open it`,
      change: 'read at the source what it drives at most'
    }
  return { says: `no short behind ${name} drives a current through it`, change: 'draw the runs from a source through it to what it feeds' }
}

/** Whether it is the first behind a source, or there is wire that relies on it: none of that is safe without. */
function isNeeded({ fit, guards }: CircuitJudged, name: string): boolean {
  if (guards.bare.before.has(name)) return true
  return fit.runs.some(run => wireIn(run) !== undefined && reliesOn(guards, run.id).some(group => isIn(group, name)))
}

type Short = CircuitJudged['bounds']['shorts'][number]

/** What it opens at is no pass where a short may go round it, and no fault where another is sure to open first. */
export function farFinding(judged: CircuitJudged, rated: RatedProtector, far: Short | null): Finding {
  const { name, run } = rated
  const protector = toldOf(rated)
  const [faultA, longestS, edge] = [far?.faultA ?? null, far?.longestS ?? null, far?.edge ?? null]
  const found = asked(farEndShort, { protector, faultA, longestS, edge, unsure: noShort(judged, rated), ...steadyOf(judged.circuit) })
  if (returnOf(judged, name) !== null) return doubted(found, ['a short to ground goes round it: it stands in the return'])
  const before = opensBefore(judged.guards, run, name)
  const asksIt = judged.fit.shorts.some(short => short.group.includes(name))
  if (asksIt || before.length === 0 || found.verdict !== 'fail') return found
  return {
    ...found,
    verdict: 'caution',
    says: `${found.says}; ${before.join(' and ')} in the same way lets no more through, and opens such a short`
  }
}
