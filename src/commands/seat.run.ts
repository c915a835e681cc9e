import { Given } from '../formula/given.ts'
import { asked } from '../rules/rule.ts'
import { bottomsOnFloor } from '../rules/seat/bottoms-on-floor.ts'
import { jamsInRunOut } from '../rules/seat/jams-in-run-out.ts'
import { jamsWithoutTerminal } from '../rules/seat/jams-without-terminal.ts'
import { seat as calculation, type Floor } from '../trade/hole/seat.ts'
import { readThread } from '../trade/thread/designation.ts'
import { SEAT_RESULTS } from '../work/results/seat-results.ts'
import type { Run } from './describe.ts'
import { quickSum } from './quick-sum.ts'
import { refusal, refused } from './refusal.ts'
import { seat as description } from './seat.ts'
import { sum } from './sum.ts'
import type { Words } from './words.ts'

export const run: Run = quickSum(description, { thread: readThread }, words => {
  const floor = floorOf(words)
  if (refused(floor)) return floor
  const tree = {
    pitchMm: new Given(words.thread.pitchMm),
    threadLengthMm: words['thread-length'],
    threadDepthMm: words['thread-depth'],
    stack: words.stack.map(thicknessMm => ({ thicknessMm })),
    crushMm: words.crush,
    floor
  }
  return sum({
    title: `${words.thread.name} under a stack of ${words.stack.length}: room is positive, a gap left under the shoulder negative`,
    tree: () => tree,
    calculation,
    results: SEAT_RESULTS,
    findings: r => [jamsInRunOut, ...(r.floor === null ? [] : [bottomsOnFloor]), jamsWithoutTerminal].map(rule => asked(rule, r))
  })
})

type SeatWords = Pick<Words<typeof description.rows>, 'overall' | 'floor-depth'>

/** The floor is judged where both lengths are known; one of them alone says nothing. */
function floorOf({ overall, 'floor-depth': floorDepthMm }: SeatWords): Floor | null | ReturnType<typeof refusal> {
  if (overall === null && floorDepthMm === null) return null
  if (overall === null) return refusal('--overall', '--floor-depth without --overall', 'both, or neither')
  if (floorDepthMm === null) return refusal('--floor-depth', '--overall without --floor-depth', 'both, or neither')
  return { overallMm: overall, floorDepthMm }
}
