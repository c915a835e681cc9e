import type { Facts } from '../formula/formula.ts'
import * as ampacity from '../trade/circuit/ampacity.ts'
import * as altitude from '../trade/circuit/ampacity-altitude.ts'
import * as ambient from '../trade/circuit/ampacity-ambient.ts'
import * as freeAir from '../trade/circuit/ampacity-free-air.ts'
import * as reach from '../trade/circuit/ampacity-reach.ts'
import * as loadedWire from '../trade/circuit/ampacity-temperature.ts'
import * as thinWire from '../trade/circuit/ampacity-thin.ts'
import * as constantPower from '../trade/circuit/constant-power.ts'
import * as conductors from '../trade/circuit/copper.ts'
import * as feed from '../trade/circuit/feed.ts'
import * as fuse from '../trade/circuit/fuse-resistance.ts'
import * as guardedWire from '../trade/circuit/guarded-wire.ts'
import * as heatBalance from '../trade/circuit/heat-balance.ts'
import * as inrushSteps from '../trade/circuit/inrush-steps.ts'
import * as load from '../trade/circuit/load.ts'
import * as protection from '../trade/circuit/protection.ts'
import * as protectorPlace from '../trade/circuit/protection-ambient.ts'
import * as opening from '../trade/circuit/protection-opening.ts'
import * as wireLimit from '../trade/circuit/protection-wire-limit.ts'
import * as ratingShare from '../trade/circuit/rating-share.ts'
import * as shortHeating from '../trade/circuit/short-heating.ts'
import * as switchFactor from '../trade/circuit/switch-factor.ts'
import * as switchInrush from '../trade/circuit/switch-inrush.ts'
import * as switchOn from '../trade/circuit/switch-on.ts'
import * as bond from '../trade/circuit/terminal-bond.ts'
import * as warmth from '../trade/circuit/warmth.ts'
import * as wire from '../trade/circuit/wire.ts'
import * as wireShort from '../trade/circuit/wire-short.ts'
import * as air from '../trade/heat/air.ts'
import * as airCooling from '../trade/heat/air-cooling.ts'
import * as atmosphere from '../trade/heat/atmosphere.ts'
import * as conduction from '../trade/heat/conduction.ts'
import * as creep from '../trade/heat/creep.ts'
import * as film from '../trade/heat/film.ts'
import * as fixedPower from '../trade/heat/fixed-power.ts'
import * as heating from '../trade/heat/heating.ts'
import * as moistAir from '../trade/heat/moist-air.ts'
import * as movingAir from '../trade/heat/moving-air.ts'
import * as radiation from '../trade/heat/radiation.ts'
import * as saturation from '../trade/heat/saturation.ts'
import * as stillAir from '../trade/heat/still-air.ts'
import * as thermostat from '../trade/heat/thermostat.ts'
import * as wetBulb from '../trade/heat/wet-bulb.ts'
import * as clearance from '../trade/hole/clearance.ts'
import * as clocking from '../trade/hole/clocking.ts'
import * as depth from '../trade/hole/depth.ts'
import * as engaged from '../trade/hole/engaged.ts'
import * as gap from '../trade/hole/gap.ts'
import * as neckRim from '../trade/hole/neck-rim.ts'
import * as oldBottom from '../trade/hole/old-bottom.ts'
import * as tapping from '../trade/hole/tapping.ts'
import * as wall from '../trade/hole/wall.ts'
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
import * as moment from '../trade/mass/moment.ts'
import * as meterError from '../trade/proof/meter-error.ts'
import * as spread from '../trade/proof/spread.ts'
import * as battery from '../trade/supply/battery-resistance.ts'
import * as batteryState from '../trade/supply/battery-state.ts'
import * as generator from '../trade/supply/generator.ts'
import * as supplyLoad from '../trade/supply/load.ts'
import * as margin from '../trade/supply/margin.ts'
import * as peukert from '../trade/supply/peukert.ts'
import * as phase from '../trade/supply/phase.ts'
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
  hole: [oldBottom, clearance, depth, tapping, gap, neckRim, engaged, clocking, wall],
  joint: [shearArea, strip, torqueArm, preload, body, bearing, strengthRatio, preloadScatter, tappingTorque, torqueWrench],
  circuit: [
    conductors,
    feed,
    constantPower,
    load,
    ratingShare,
    switchOn,
    ampacity,
    ambient,
    altitude,
    freeAir,
    reach,
    thinWire,
    loadedWire,
    wire,
    wireShort,
    guardedWire,
    protection,
    protectorPlace,
    opening,
    wireLimit,
    fuse,
    warmth,
    shortHeating,
    heatBalance,
    switchFactor,
    switchInrush,
    inrushSteps,
    bond
  ],
  supply: [supplyLoad, margin, phase, generator, peukert, batteryState, battery],
  heat: [
    saturation,
    moistAir,
    wetBulb,
    atmosphere,
    heating,
    thermostat,
    film,
    air,
    movingAir,
    stillAir,
    radiation,
    conduction,
    fixedPower,
    airCooling,
    creep
  ],
  mass: [moment],
  proof: [meterError, spread]
}

export function formulasOf(files: readonly object[]): readonly Facts[] {
  return files.flatMap(file => Object.values(file)).filter((value): value is Facts => typeof value === 'function' && 'equation' in value)
}
