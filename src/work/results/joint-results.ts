import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import type { ResultMap } from '../../report/result-map.ts'
import * as bearing from '../../trade/joint/bearing.ts'
import * as body from '../../trade/joint/body.ts'
import type { joint } from '../../trade/joint/joint.ts'
import * as pull from '../../trade/joint/preload.ts'
import * as shear from '../../trade/joint/shear-area.ts'
import * as strip from '../../trade/joint/strip.ts'
import { straightNm } from '../../trade/joint/torque-wrench.ts'
import { stressAreaMm2 } from '../../trade/thread/stress-area.ts'

const highest = fact('highestTorqueNm', { says: 'highest torque: something gives', symbol: 'Tmax', source: SOURCES.arithmetic })

/** In a job: what the part gets, with the error of the wrench. */
export const TORQUE_RESULT: ResultMap<{ readonly torqueNm: number | null }> = {
  torque: [straightNm, r => r.torqueNm, 'torque that the part gets']
}

export const JOINT_RESULTS: ResultMap<ReturnType<typeof joint>> = {
  'stress-area': [stressAreaMm2, r => r.stressAreaMm2, 'tensile stress area'],
  'shear-area.internal': [shear.internalShearAreaMm2, r => r.internalShearAreaMm2],
  'shear-area.external': [shear.externalShearAreaMm2, r => r.externalShearAreaMm2],
  'strip-load.internal': [strip.internalStripLoadN, r => r.internalStripLoadN],
  'strip-load.external': [strip.externalStripLoadN, r => r.externalStripLoadN],
  'engagement.required': [strip.engagementRequiredMm, r => r.engagementRequiredMm],
  preload: [pull.preloadN, r => r.preloadN],
  'stress.tension': [body.tensionMpa, r => r.tensionMpa],
  'stress.combined': [body.combinedMpa, r => r.combinedMpa],
  'bearing-pressure': [bearing.bearingPressureMpa, r => r.bearingPressureMpa],
  'torque.lowest': [pull.preloadTorqueNm, r => r.lowestTorqueNm, 'lowest torque: the clamping force wanted', 'torque-up'],
  'torque.highest': [highest, r => r.highestTorqueNm, undefined, 'torque-down']
}
