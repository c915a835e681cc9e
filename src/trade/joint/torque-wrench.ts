import { formula } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { SOURCES } from '../../formula/source.ts'

/** From the middle of the grip to the fastener, measured along the wrench. Straight on is 0°: it lengthens; at 180° it shortens. */
export const reachMm = formula('reachMm', {
  says: 'middle of the grip to the fastener, along the wrench',
  symbol: 'r',
  equation: 'L + E·cos(a)',
  inputs: { leverMm: ['L', 10, 3000], adapterMm: ['E', 0, 3000], angleDeg: ['a', 0, 180] },
  source: SOURCES['torque-adapter'],
  of: ({ leverMm, adapterMm, angleDeg }) => leverMm + adapterMm * Math.cos((angleDeg * Math.PI) / 180)
})

export const wrenchSettingNm = formula('wrenchSettingNm', {
  says: 'what to set on the wrench',
  symbol: 'Tw',
  equation: 'T·L/r',
  inputs: { torqueNm: ['T', 0, 5000], leverMm: ['L', 10, 3000], reachMm: ['r', 0.1, 6000] },
  source: SOURCES['torque-adapter'],
  of: ({ torqueNm, leverMm, reachMm }) => (torqueNm * leverMm) / reachMm
})

/** The error is that of the wrench, in percent of what is set. */
export const fastenerNm = formula('fastenerNm', {
  says: 'torque that the fastener gets',
  symbol: 'T',
  equation: 'Tw·(1 + e/100)·r/L',
  inputs: { settingNm: ['Tw', 0, 5e6], errorPercent: ['e', -50, 50], reachMm: ['r', 0.1, 6000], leverMm: ['L', 10, 3000] },
  source: SOURCES['torque-adapter'],
  of: ({ settingNm, errorPercent, reachMm, leverMm }) => (settingNm * (1 + errorPercent / 100) * reachMm) / leverMm
})

export const straightNm = formula('straightNm', {
  says: 'torque that the fastener gets, without an adapter',
  symbol: 'T',
  equation: 'Tw·(1 + e/100)',
  inputs: { settingNm: ['Tw', 0, 5e6], errorPercent: ['e', -50, 50] },
  source: SOURCES.arithmetic,
  of: ({ settingNm, errorPercent }) => settingNm * (1 + errorPercent / 100)
})

export const aboveLeastNm = formula('aboveLeastNm', {
  says: 'setting above the least of the wrench',
  symbol: 'm',
  equation: 'Tw - l',
  inputs: { settingNm: ['Tw', 0, 5e6], leastNm: ['l', 0, 5000] },
  source: SOURCES.arithmetic,
  of: ({ settingNm, leastNm }) => settingNm - leastNm
})

export const belowGreatestNm = formula('belowGreatestNm', {
  says: 'setting below the greatest of the wrench',
  symbol: 'm',
  equation: 'g - Tw',
  inputs: { greatestNm: ['g', 0, 5000], settingNm: ['Tw', 0, 5e6] },
  source: SOURCES.arithmetic,
  of: ({ greatestNm, settingNm }) => greatestNm - settingNm
})

export interface Adapter {
  /** Middle of the grip to the drive. */
  readonly leverMm: Given
  /** Drive to fastener. */
  readonly adapterMm: Given
  readonly angleDeg: Given
}

/** What to set so that the fastener gets the wanted torque. Set at the nominal: the setting is one exact number. */
export function wrenchSetting({ torqueNm, adapter }: { readonly torqueNm: number; readonly adapter: Plain<Adapter> }): number {
  return wrenchSettingNm({ torqueNm, leverMm: adapter.leverMm, reachMm: reach(adapter) })
}

export interface Pull {
  /** What the wrench is set to. */
  readonly settingNm: Given
  /** What the fastener should get. */
  readonly cardNm: Given
  /** Error of the wrench: 0, give or take its accuracy. */
  readonly errorPercent: Given
  readonly adapter: Adapter | undefined
}

/**
 * What the fastener gets at this setting. `shownTorqueNm` is what it would get if the card value were set,
 * or read off, with the adapter on; without an adapter there is no such trap.
 */
export function pulled({ settingNm, cardNm, errorPercent, adapter }: Plain<Pull>) {
  if (adapter === undefined) return { fastenerNm: straightNm({ settingNm, errorPercent }), shownTorqueNm: undefined }
  const { leverMm } = adapter
  const reachMm = reach(adapter)
  const shownTorqueNm: number | undefined = fastenerNm({ settingNm: cardNm, errorPercent, reachMm, leverMm })
  return { fastenerNm: fastenerNm({ settingNm, errorPercent, reachMm, leverMm }), shownTorqueNm }
}

function reach(adapter: Plain<Adapter>): number {
  const mm = reachMm(adapter)
  if (mm > 0.1) return mm
  throw new NoAnswer(
    'an adapter turned back to the grip or past it gives the pull no lever',
    'turn the adapter outward, or take a shorter one or a longer wrench'
  )
}
