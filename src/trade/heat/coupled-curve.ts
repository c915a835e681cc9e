import type { Plain } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { silently } from '../../formula/working.ts'
import { castingLostW } from './casting-loss.ts'
import * as conduction from './conduction.ts'
import * as heating from './heating.ts'
import { Solver } from './step-solver.js'
import type { TwoNode } from './two-node.ts'

/** The pair at one time, and the heat lost by the casting until then. */
export interface CoupledPoint {
  readonly timeS: number
  readonly bodyC: number
  readonly castingC: number
  readonly lostJ: number
}

/**
 * The two temperatures at even times, with film and radiation as the casting warms, by a step-controlled extrapolation method.
 * For plots and as a second opinion: its last digits jump with the steps, so bounds are worked out from `twoNode`.
 */
export function coupledCurve(x: Plain<TwoNode>, { lastS, stepCount }: { readonly lastS: number; readonly stepCount: number }) {
  return silently(() => {
    const change = changeOf(x)
    const points: CoupledPoint[] = [{ timeS: 0, bodyC: x.startC, castingC: x.startC, lostJ: 0 }]
    for (let step = 1; step <= stepCount; step++) points.push(next(change, points[step - 1]!, (step * lastS) / stepCount))
    return points
  })
}

function next(change: Change, { timeS, bodyC, castingC, lostJ }: CoupledPoint, untilS: number): CoupledPoint {
  const solver = new Solver(3)
  solver.absoluteTolerance = 1e-10
  solver.relativeTolerance = 1e-10
  const { y, outcome } = solver.solve(change, timeS, [bodyC, castingC, lostJ], untilS)
  if (outcome !== 0)
    throw new NoAnswer('the warm-up could not be followed step by step', 'look at the masses and conductances: two of them differ too far')
  return { timeS: untilS, bodyC: y[0]!, castingC: y[1]!, lostJ: y[2]! }
}

type Change = (timeS: number, state: readonly number[]) => number[]

/** Rates of the two temperatures and of the heat lost. */
function changeOf({ powerW, body, casting, joint, loss }: Plain<TwoNode>): Change {
  const bodyJPerK = heating.capacityJPerK(body)
  const castingJPerK = heating.capacityJPerK(casting)
  const jointWPerK = conduction.jointWPerK(joint)
  return (_timeS, [bodyC = 0, castingC = 0]) => {
    const throughW = jointWPerK * (bodyC - castingC)
    const lostW = castingLostW(loss, castingC)
    return [(powerW - throughW) / bodyJPerK, (throughW - lostW) / castingJPerK, lostW]
  }
}
