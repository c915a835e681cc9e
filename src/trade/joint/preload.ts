import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const preloadN = formula('preloadN', {
  says: 'preload that a torque gives',
  symbol: 'F',
  equation: '1000·T/a',
  inputs: { torqueNm: ['T', 0, 1e5], armMm: ['a', 0.01, 900] },
  source: SOURCES.shigley,
  of: ({ torqueNm, armMm }) => (1000 * torqueNm) / armMm
})

export const preloadTorqueNm = formula('preloadTorqueNm', {
  says: 'torque that gives a preload',
  symbol: 'T',
  equation: 'a·F/1000',
  inputs: { armMm: ['a', 0.01, 900], preloadN: ['F', 0, 1e8] },
  source: SOURCES.shigley,
  of: ({ armMm, preloadN }) => (armMm * preloadN) / 1000
})

export const threadTorqueNm = formula('threadTorqueNm', {
  says: 'share of the torque that twists the body',
  symbol: 'Mg',
  equation: 'at·F/1000',
  inputs: { threadArmMm: ['at', 0.01, 300], preloadN: ['F', 0, 1e8] },
  source: SOURCES['iso-16047'],
  of: ({ threadArmMm, preloadN }) => (threadArmMm * preloadN) / 1000
})
