import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const threadDepthMm = formula('threadDepthMm', {
  says: 'face to the last full thread; negative: no full thread',
  symbol: 'lt',
  equation: 'hf - c - n·P',
  inputs: {
    fullDiameterDepthMm: ['hf', -100, 500],
    tapClearMm: ['c', 0, 50],
    chamferTurns: ['n', 0.5, 20],
    pitchMm: ['P', 0.2, 8]
  },
  source: SOURCES['tap-depth'],
  of: ({ fullDiameterDepthMm, tapClearMm, chamferTurns, pitchMm }) => fullDiameterDepthMm - tapClearMm - chamferTurns * pitchMm
})

export const tapTurns = formula('tapTurns', {
  says: 'turns of the tap, nought with its end level with the face',
  symbol: 'z',
  equation: '(hf - c)/P',
  inputs: { fullDiameterDepthMm: ['hf', -100, 500], tapClearMm: ['c', 0, 50], pitchMm: ['P', 0.2, 8] },
  source: SOURCES.geometry,
  of: ({ fullDiameterDepthMm, tapClearMm, pitchMm }) => (fullDiameterDepthMm - tapClearMm) / pitchMm
})

export const needMarginMm = formula('needMarginMm', {
  says: 'full thread beyond what is needed',
  symbol: 'y',
  equation: 'lt - l0',
  inputs: { threadDepthMm: ['lt', -300, 500], needMm: ['l0', 0, 300] },
  source: SOURCES.arithmetic,
  of: ({ threadDepthMm, needMm }) => threadDepthMm - needMm
})

export const centreRoomMm = formula('centreRoomMm', {
  says: "room for a tap's front centre before it meets the end of the drilled point",
  symbol: 'q',
  equation: 'lp + c',
  inputs: { pointLengthMm: ['lp', 0, 100], tapClearMm: ['c', 0, 50] },
  source: SOURCES['tap-depth'],
  of: ({ pointLengthMm, tapClearMm }) => pointLengthMm + tapClearMm
})

export const centreGapMm = formula('centreGapMm', {
  says: "gap between a tap's front centre and the end of the drilled point",
  symbol: 'g3',
  equation: 'q - lc',
  inputs: { centreRoomMm: ['q', 0, 150], centreMm: ['lc', 0, 50] },
  source: SOURCES['tap-depth'],
  of: ({ centreRoomMm, centreMm }) => centreRoomMm - centreMm
})

export const usableThreadMm = formula('usableThreadMm', {
  says: 'usable thread with the regular run-out of the standard',
  symbol: 'lu',
  equation: 'hf - e1',
  inputs: { fullDiameterDepthMm: ['hf', -100, 500], runOutMm: ['e1', 0, 30] },
  source: SOURCES['din-76-1'],
  of: ({ fullDiameterDepthMm, runOutMm }) => fullDiameterDepthMm - runOutMm
})
