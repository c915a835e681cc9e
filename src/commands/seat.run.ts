import type { BoundsOf } from '../formula/bounds.ts'
import { Given } from '../formula/given.ts'
import { showMetricAndInch } from '../quantity/show.ts'
import { asked } from '../rules/rule.ts'
import { bottomsOnFloor } from '../rules/seat/bottoms-on-floor.ts'
import { connectorMisclocked } from '../rules/seat/connector-misclocked.ts'
import { jamsInRunOut } from '../rules/seat/jams-in-run-out.ts'
import { jamsWithoutTerminal } from '../rules/seat/jams-without-terminal.ts'
import { stackCrushes } from '../rules/seat/stack-crushes.ts'
import { stackTooThick } from '../rules/seat/stack-too-thick.ts'
import { threadNotEngaged } from '../rules/seat/thread-not-engaged.ts'
import { type Clocking, clockingOf } from '../trade/hole/clocking.ts'
import { crushOf } from '../trade/hole/crush-of.ts'
import { allPlain, crushedAway, shortPart } from '../trade/hole/odd-lengths.ts'
import { seat as calculation, type Floor, type Seat } from '../trade/hole/seat.ts'
import { basicSizes } from '../trade/thread/basic.ts'
import { readThread } from '../trade/thread/designation.ts'
import { readDrill } from '../trade/thread/read-drill.ts'
import { seatSection } from '../work/drawing/seat-section.ts'
import { type NeckUntold, unsureOfNeck } from '../work/job/neck-doubt.ts'
import { undercutDoubted } from '../work/job/undercut-doubt.ts'
import { SEAT_RESULTS } from '../work/results/seat-results.ts'
import type { Run } from './describe.ts'
import { quickSum } from './quick-sum.ts'
import { refusal, refused } from './refusal.ts'
import { seat as description } from './seat.ts'
import { neckFault, neckUntold, rimIn } from './seat-neck.ts'
import { behindUndercut } from './seat-undercut.ts'
import { sum } from './sum.ts'
import type { Words } from './words.ts'

const readers = { thread: readThread, drill: readDrill }
type SeatWords = Words<typeof description.rows, typeof readers>

export const run: Run = quickSum(description, readers, words => {
  const floor = floorOf(words)
  if (refused(floor)) return floor
  const plain = allPlain(words.undercut, words['thread-length'])
  if (plain !== null) return refusal('--undercut', plain, 'less than --thread-length')
  const wide = drillFault(words)
  if (wide !== null) return wide
  const clocking = clockOf(words)
  if (refused(clocking)) return clocking
  const stands = neckFault(words)
  if (stands !== null) return stands
  const { name, majorMm } = words.thread
  const untold = neckUntold(words)
  const seated = treeOf(words, { floor, clocking })
  return sum({
    title: `${name} under ${words.stack.length === 1 ? 'one thickness' : `${words.stack.length} thicknesses`}: room is positive, a gap left under the shoulder negative`,
    first: r => stackFirst(r, untold),
    tree: () => seated,
    calculation,
    results: SEAT_RESULTS,
    drawing: (plain, r) => seatSection({ name, majorMm, minorMm: basicSizes(words.thread).minorDiameterMm }, plain, r),
    findings: r =>
      undercutDoubted(
        [
          ...unsureOfNeck(
            [
              asked(jamsInRunOut, r),
              ...(r.floor === null ? [] : [asked(bottomsOnFloor, r)]),
              asked(jamsWithoutTerminal, r),
              asked(threadNotEngaged, { engagedMm: r.engagedMm, pitchMm: words.thread.pitchMm })
            ],
            untold
          ),
          ...(words.crush.assumed === undefined ? [asked(stackCrushes, { stack: words.stack, crushMm: words.crush })] : []),
          ...(words.need === null ? [] : [asked(stackTooThick, r)]),
          ...(clocking === null ? [] : [asked(connectorMisclocked, { ...r, unknown: unknownIn(r, untold) })])
        ],
        { undercut: words.undercut, thread: words.thread, path: [] },
        mm => behindUndercut(seated, mm)
      ),
    cautions: () => [
      'measure part and stack as they go in: plating adds its thickness to every face, and four times it to the pitch diameter of a thread (memory)',
      ...(words.undercut.assumed === undefined
        ? []
        : [
            'the part is taken as threaded up to its shoulder: what is plain there (neck, undercut) and lies below the face is off the engagement'
          ])
    ]
  })
})

type Results = BoundsOf<ReturnType<typeof calculation>>

/** The one number that scraps the casting first. */
function stackFirst(r: Results, untold: NeckUntold): string {
  const { high } = r.leastStackMm
  const lands =
    r.floor === null ? 'before the thread runs out the shoulder lands without any stack' : 'the shoulder lands without any stack'
  const unknown = unknownIn(r, untold)
    .map(what => `; ${what} is not known`)
    .join('')
  return high > 0
    ? `first: never less than ${showMetricAndInch(high, 'depth-up')} under the shoulder, before crush: less, and the part jams and cracks the casting`
    : `first: ${lands}, with ${showMetricAndInch(-high, 'depth-down')} of room at the worst end${unknown}`
}

/** What else may stop the part before its shoulder lands. */
function unknownIn({ floor }: Results, { bare }: NeckUntold): readonly string[] {
  return [...(floor === null ? ['the floor'] : []), ...(bare === null ? [] : ['the width of the neck'])]
}

function treeOf(words: SeatWords, rest: Pick<Seat, 'floor' | 'clocking'>): Seat {
  return {
    pitchMm: new Given(words.thread.pitchMm),
    threadLengthMm: words['thread-length'],
    threadDepthMm: words['thread-depth'],
    stack: words.stack.map(thicknessMm => ({ thicknessMm })),
    crushMm: crushOf(words.crush, words.stack),
    mouthMm: words.mouth,
    undercutMm: words.undercut.assumed === undefined ? words.undercut : null,
    rim: rimIn(words),
    needMm: words.need,
    ...rest
  }
}

/** The floor is judged where both lengths are known; one of them alone says nothing. */
function floorOf(words: SeatWords): Floor | null | ReturnType<typeof refusal> {
  const { overall, 'floor-depth': floorDepthMm } = words
  if (overall === null && floorDepthMm === null) return crushFault(words)
  if (overall === null) return refusal('--overall', '--floor-depth without --overall', 'both, or neither')
  if (floorDepthMm === null) return refusal('--floor-depth', '--overall without --floor-depth', 'both, or neither')
  return mismatchOf(words, { overallMm: overall, floorDepthMm }) ?? { overallMm: overall, floorDepthMm }
}

/** Lengths that cannot be those of one part in one hole. */
function mismatchOf(words: SeatWords, { overallMm, floorDepthMm }: Floor): ReturnType<typeof refusal> | null {
  const short = shortPart(overallMm, words['thread-length'])
  if (short !== null) return refusal('--overall', short, 'at least --thread-length')
  if (floorDepthMm.high < words['thread-depth'].low)
    return refusal('--floor-depth', 'a floor above the end of the full thread', 'at least --thread-depth')
  return crushFault(words)
}

function crushFault({ crush, stack }: SeatWords): ReturnType<typeof refusal> | null {
  const away = crushedAway(crush, stack)
  return away === null ? null : refusal('--crush', away, 'less than --stack in all, at its thinnest')
}

/** A hole as wide as its thread has none. */
function drillFault({ drill, thread: { majorMm, name } }: SeatWords): ReturnType<typeof refusal> | null {
  if (drill === null || drill.diameterMm < majorMm) return null
  return refusal('--drill', `a drill of ${drill.diameterMm} mm, which leaves no thread ${name}`, `less than ${majorMm} mm`)
}

/** Where the connector points, where it should, and how far it may turn: all three or none. */
function clockOf(words: SeatWords): Clocking | null | ReturnType<typeof refusal> {
  const { 'clock-now': nowDeg, 'clock-want': wantDeg, 'torque-turn': bandDeg } = words
  if (nowDeg === null && wantDeg === null && bandDeg === null) return null
  if (nowDeg === null || wantDeg === null || bandDeg === null)
    return refusal('--clock-now', 'a part of the clocking', '--clock-now, --clock-want and --torque-turn')
  return clockingOf({ nowDeg, wantDeg, bandDeg })
}
