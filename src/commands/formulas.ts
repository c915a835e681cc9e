import type { Facts } from '../formula/formula.ts'
import * as constantPower from '../trade/circuit/constant-power.ts'
import * as conductors from '../trade/circuit/copper.ts'
import * as feed from '../trade/circuit/feed.ts'
import * as load from '../trade/circuit/load.ts'
import * as ratingShare from '../trade/circuit/rating-share.ts'
import * as switchOn from '../trade/circuit/switch-on.ts'
import * as clearance from '../trade/hole/clearance.ts'
import * as depth from '../trade/hole/depth.ts'
import * as gap from '../trade/hole/gap.ts'
import * as oldBottom from '../trade/hole/old-bottom.ts'
import * as tapping from '../trade/hole/tapping.ts'
import * as torqueWrench from '../trade/joint/torque-wrench.ts'
import * as meterError from '../trade/proof/meter-error.ts'
import * as spread from '../trade/proof/spread.ts'
import * as basic from '../trade/thread/basic.ts'
import * as formingDrill from '../trade/thread/forming-drill.ts'
import * as stressArea from '../trade/thread/stress-area.ts'
import * as threadHeight from '../trade/thread/thread-height.ts'

/** Every file of formulas, by the room it stands in: the list that `explain` and the handbook read. */
export const FORMULA_FILES: { readonly [room: string]: readonly object[] } = {
  thread: [basic, threadHeight, stressArea, formingDrill],
  hole: [oldBottom, clearance, depth, tapping, gap],
  joint: [torqueWrench],
  circuit: [conductors, feed, constantPower, load, ratingShare, switchOn],
  proof: [meterError, spread]
}

export function formulasOf(files: readonly object[]): readonly Facts[] {
  return files.flatMap(file => Object.values(file)).filter((value): value is Facts => typeof value === 'function' && 'equation' in value)
}
