// Copied from manuals. Each row names its source; the label says how the source was seen.

import type { Cited } from './cited.ts'

/** Exact by definition: pound-force of 0.45359237 kg, standard gravity 9.80665 m/s², inch of 25.4 mm. */
const LBF_IN_NM = 0.45359237 * 9.80665 * 0.0254
const LBF_FT_NM = 12 * LBF_IN_NM
const IN_MM = 25.4

/** Wanted torque at the fastener, and what the manual says to set; each in the manual's own units, with the slack of its digits. */
export const SETTINGS: readonly (Cited & {
  readonly given: string
  readonly torqueNm: number
  readonly leverMm: number
  readonly adapterMm: number
  readonly angleDeg: number
  readonly setting: number
  readonly unitNm: number
  readonly slack: number
})[] = [
  {
    given: '300 lbf·in, 10 in, adapter 4 in: 214 lbf·in',
    torqueNm: 300 * LBF_IN_NM,
    leverMm: 10 * IN_MM,
    adapterMm: 4 * IN_MM,
    angleDeg: 0,
    setting: 214,
    unitNm: LBF_IN_NM,
    slack: 0.5,
    source: 'TM 1-1500-204-23-9 par. on attachments',
    label: 'read'
  },
  {
    given: '40 lbf·ft, 12 in, adapter 4 in: 30 lbf·ft',
    torqueNm: 40 * LBF_FT_NM,
    leverMm: 12 * IN_MM,
    adapterMm: 4 * IN_MM,
    angleDeg: 0,
    setting: 30,
    unitNm: LBF_FT_NM,
    slack: 0.01,
    source: 'TM 9-2350-277-40&P',
    label: 'read'
  },
  {
    given: '135 lbf·in, 10 in, adapter 1.5 in: 117.39 lbf·in',
    torqueNm: 135 * LBF_IN_NM,
    leverMm: 10 * IN_MM,
    adapterMm: 1.5 * IN_MM,
    angleDeg: 0,
    setting: 117.39,
    unitNm: LBF_IN_NM,
    slack: 0.01,
    source: 'helicopter maintenance manual ch. 20',
    label: 'read'
  },
  {
    given: '60 N·m, 0.33 m, adapter 0.05 m: 52.1 N·m',
    torqueNm: 60,
    leverMm: 330,
    adapterMm: 50,
    angleDeg: 0,
    setting: 52.1,
    unitNm: 1,
    slack: 0.05,
    source: 'car maker workshop manual',
    label: 'read'
  },
  {
    given: '20 lbf·ft, 14 in, adapter 3 in: 16.5 lbf·ft',
    torqueNm: 20 * LBF_FT_NM,
    leverMm: 14 * IN_MM,
    adapterMm: 3 * IN_MM,
    angleDeg: 0,
    setting: 16.5,
    unitNm: LBF_FT_NM,
    slack: 0.05,
    source: 'motorcycle service manual (exact 16.47)',
    label: 'read'
  },
  {
    given: '5 N·m, 250 mm, adapter 40 mm at 60°: 4.630 N·m (invented inputs)',
    torqueNm: 5,
    leverMm: 250,
    adapterMm: 40,
    angleDeg: 60,
    setting: 4.63,
    unitNm: 1,
    slack: 0.001,
    source: 'plane geometry, computed; a manual shows the case, but its formula is misprinted',
    label: 'memory'
  },
  {
    given: 'adapter at 90°: no correction (the torque and lengths are invented)',
    torqueNm: 17,
    leverMm: 300,
    adapterMm: 60,
    angleDeg: 90,
    setting: 17,
    unitNm: 1,
    slack: 1e-9,
    source: 'torque wrench instruction sheet',
    label: 'read'
  }
]

/** Set to 60 lbf·in, lever 12 in, extension 2 in: 70 lbf·in at the fastener. */
export const AT_FASTENER: Cited & {
  readonly settingNm: number
  readonly leverMm: number
  readonly adapterMm: number
  readonly gotNm: number
} = {
  settingNm: 60 * LBF_IN_NM,
  leverMm: 12 * IN_MM,
  adapterMm: 2 * IN_MM,
  gotNm: 70 * LBF_IN_NM,
  source: 'TM 9-254 torque wrench section',
  label: 'read'
}
