import type { ResultMap } from '../../report/result-map.ts'
import * as gap from '../../trade/hole/gap.ts'
import type { seat } from '../../trade/hole/seat.ts'

export const SEAT_RESULTS: ResultMap<ReturnType<typeof seat>> = {
  'run-out.with-stack': [gap.runOutGapMm, r => r.runOut.withStackMm, 'room before the thread runs out, with the stack'],
  'run-out.without-stack': [gap.runOutGapMm, r => r.runOut.withoutStackMm, 'the same without the stack'],
  'floor.with-stack': [gap.floorGapMm, r => r.floor?.withStackMm, 'room before the floor, with the stack'],
  'floor.without-stack': [gap.floorGapMm, r => r.floor?.withoutStackMm, 'the same without the stack'],
  'turns-to-shoulder': [gap.shoulderTurns, r => r.shoulderTurns],
  'least-stack': [gap.runOutStackMm, r => r.leastStackMm, 'least stack that works, before crush']
}
