import type { ResultMap } from '../../report/result-map.ts'
import * as clocking from '../../trade/hole/clocking.ts'
import * as engaged from '../../trade/hole/engaged.ts'
import * as gap from '../../trade/hole/gap.ts'
import * as rim from '../../trade/hole/neck-rim.ts'
import type { seat } from '../../trade/hole/seat.ts'

export const SEAT_RESULTS: ResultMap<ReturnType<typeof seat>> = {
  'least-stack': [gap.LEAST_STACK, r => r.leastStackMm, 'least stack that works, before crush', 'depth-up'],
  'greatest-stack': [engaged.greatestStackMm, r => r.greatestStackMm, undefined, 'depth-down'],
  'run-out.with-stack': [gap.runOutGapMm, r => r.runOut.withStackMm, 'room before the thread runs out, with the stack', 'depth-down'],
  'run-out.without-stack': [gap.bareRunOutGapMm, r => r.runOut.withoutStackMm, 'the same without the stack', 'depth-down'],
  'floor.with-stack': [gap.floorGapMm, r => r.floor?.withStackMm, 'room before the floor, with the stack', 'depth-down'],
  'floor.without-stack': [gap.bareFloorGapMm, r => r.floor?.withoutStackMm, 'the same without the stack', 'depth-down'],
  'rim.with-stack': [rim.neckGapMm, r => r.rim?.withStackMm, 'room before the neck stands on the rim, with the stack', 'depth-down'],
  'rim.without-stack': [rim.bareNeckGapMm, r => r.rim?.withoutStackMm, 'the same without the stack', 'depth-down'],
  'feel-gap': [gap.FEEL_GAP, r => r.feelGapMm],
  'turns-to-shoulder': [gap.shoulderTurns, r => r.shoulderTurns],
  engagement: [engaged.ENGAGED, r => r.engagedMm, undefined, 'depth-down'],
  'clock.turn': [clocking.clockTurnDeg, r => r.clock?.turnDeg],
  'clock.left': [clocking.clockLeftDeg, r => r.clock?.leftDeg],
  'clock.shim': [clocking.clockShimMm, r => r.clock?.shimMm],
  'clock.thinner': [clocking.clockThinnerMm, r => r.clock?.thinnerMm]
}
