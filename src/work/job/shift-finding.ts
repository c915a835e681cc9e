import type { Finding } from '../../rules/finding.ts'
import { shift } from '../../rules/ground/shift.ts'
import { GROUND_LIMITS } from '../../rules/practice/ground.ts'
import { asked } from '../../rules/rule.ts'
import { aloneAt } from './alone-at.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { inPosition } from './in-position.ts'
import { mostLifted } from './most-lifted.ts'
import { unfedLoads } from './unfed-loads.ts'

/** In the position of the switches in which a point is lifted most; where only a load's own return is lifted too far, of the points that are shared. */
export function shiftFinding(judged: CircuitJudged): Finding {
  const { job, circuit, positions } = judged
  const own = job.limits['ground-shift']
  const limit = own === null ? GROUND_LIMITS[job.job.practice] : { value: own.greatest.low, reason: own.reason }
  const ask = ({ at, groundPoints }: ReturnType<typeof mostLifted>) =>
    inPosition(asked(shift, { groundPoints, limit, unsure: unfedLoads(judged) }), at)
  const all = mostLifted(positions.worked)
  const found = ask(all)
  if (own !== null || found.verdict !== 'fail') return found
  const shared = mostLifted(positions.worked, point => aloneAt(circuit, point) === undefined)
  if (shared.groundPoints.length > 0) return ask(shared)
  return ask({ ...all, groundPoints: all.groundPoints.map(one => ({ ...one, alone: aloneAt(circuit, one.point) })) })
}
