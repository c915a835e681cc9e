import type { Facts } from '../formula/formula.ts'
import * as constantPower from '../trade/circuit/constant-power.ts'
import * as conductors from '../trade/circuit/copper.ts'
import * as feed from '../trade/circuit/feed.ts'
import * as load from '../trade/circuit/load.ts'
import * as ratingShare from '../trade/circuit/rating-share.ts'
import * as switchOn from '../trade/circuit/switch-on.ts'
import * as clearance from '../trade/hole/clearance.ts'
import * as clocking from '../trade/hole/clocking.ts'
import * as depth from '../trade/hole/depth.ts'
import * as engaged from '../trade/hole/engaged.ts'
import * as gap from '../trade/hole/gap.ts'
import * as oldBottom from '../trade/hole/old-bottom.ts'
import * as tapping from '../trade/hole/tapping.ts'
import * as bearing from '../trade/joint/bearing.ts'
import * as body from '../trade/joint/body.ts'
import * as preload from '../trade/joint/preload.ts'
import * as preloadScatter from '../trade/joint/preload-scatter.ts'
import * as shearArea from '../trade/joint/shear-area.ts'
import * as strengthRatio from '../trade/joint/strength-ratio.ts'
import * as strip from '../trade/joint/strip.ts'
import * as tappingTorque from '../trade/joint/tapping-torque.ts'
import * as torqueArm from '../trade/joint/torque-arm.ts'
import * as torqueWrench from '../trade/joint/torque-wrench.ts'
import * as basic from '../trade/thread/basic.ts'
import * as formingDrill from '../trade/thread/forming-drill.ts'
import * as insertHole from '../trade/thread/insert-hole.ts'
import * as insertWall from '../trade/thread/insert-wall.ts'
import * as mouthChamfer from '../trade/thread/mouth-chamfer.ts'
import * as runOut from '../trade/thread/run-out.ts'
import * as stressArea from '../trade/thread/stress-area.ts'
import * as taper from '../trade/thread/taper-pipe-taper.ts'
import * as threadHeight from '../trade/thread/thread-height.ts'
import * as unifiedTolerance from '../trade/thread/unified-tolerance.ts'

/** Every file of formulas, by the room it stands in: the list that `explain` and the handbook read. */
export const FORMULA_FILES: { readonly [room: string]: readonly object[] } = {
  thread: [basic, threadHeight, stressArea, formingDrill, unifiedTolerance, mouthChamfer, runOut, insertHole, insertWall, taper],
  hole: [oldBottom, clearance, depth, tapping, gap, engaged, clocking],
  joint: [shearArea, strip, torqueArm, preload, body, bearing, strengthRatio, preloadScatter, tappingTorque, torqueWrench],
  circuit: [conductors, feed, constantPower, load, ratingShare, switchOn]
}

export function formulasOf(files: readonly object[]): readonly Facts[] {
  return files.flatMap(file => Object.values(file)).filter((value): value is Facts => typeof value === 'function' && 'equation' in value)
}
