import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

// The wire fills a groove of the basic profile all round, so that its hole is the thread itself, larger by the height of its wire on each side.

export const insertMajorMm = formula('insertMajorMm', {
  says: 'basic major diameter of the tapped hole for a wire thread insert',
  symbol: 'Ds',
  equation: 'D + 1.299038·P',
  inputs: { majorMm: ['D', 1, 100], pitchMm: ['P', 0.2, 8] },
  source: SOURCES['wire-insert'],
  of: ({ majorMm, pitchMm }) => majorMm + 1.299038 * pitchMm
})

export const insertPitchDiameterMm = formula('insertPitchDiameterMm', {
  says: 'basic pitch diameter of the tapped hole for a wire thread insert',
  symbol: 'Es',
  equation: 'D + 0.649519·P',
  inputs: { majorMm: ['D', 1, 100], pitchMm: ['P', 0.2, 8] },
  source: SOURCES['wire-insert'],
  of: ({ majorMm, pitchMm }) => majorMm + 0.649519 * pitchMm
})

export const insertMinorMm = formula('insertMinorMm', {
  says: 'least hole to tap for a wire thread insert, the basic minor diameter',
  symbol: 'Ks',
  equation: 'D + 0.216506·P',
  inputs: { majorMm: ['D', 1, 100], pitchMm: ['P', 0.2, 8] },
  source: SOURCES['wire-insert'],
  of: ({ majorMm, pitchMm }) => majorMm + 0.216506 * pitchMm
})

export const insertHeightPercent = formula('insertHeightPercent', {
  says: "height of the insert's own thread in a hole as found, on the base 5/8 H",
  symbol: 'hs',
  equation: '100·(Ds - h)/(1.082532·P)',
  inputs: { insertMajorMm: ['Ds', 1, 120], holeMm: ['h', 0.5, 120], pitchMm: ['P', 0.2, 8] },
  source: SOURCES['thread-height'],
  of: ({ insertMajorMm, holeMm, pitchMm }) => (100 * (insertMajorMm - holeMm)) / (1.082532 * pitchMm)
})

export const insertThreadDepthMm = formula('insertThreadDepthMm', {
  says: 'full thread that the insert asks for: it sits up to a pitch below the face',
  symbol: 'ls',
  equation: 'Li + P',
  inputs: { insertLengthMm: ['Li', 0.5, 200], pitchMm: ['P', 0.2, 8] },
  source: SOURCES['wire-insert'],
  of: ({ insertLengthMm, pitchMm }) => insertLengthMm + pitchMm
})

export const insertHoleDepthMm = formula('insertHoleDepthMm', {
  says: 'full-diameter depth that the insert asks for: its thread, the chamfer of the tap and a pitch of room',
  symbol: 'hs',
  equation: 'ls + (n + 1)·P',
  inputs: { insertThreadDepthMm: ['ls', 0.5, 210], chamferTurns: ['n', 0.5, 20], pitchMm: ['P', 0.2, 8] },
  source: SOURCES['wire-insert'],
  of: ({ insertThreadDepthMm, chamferTurns, pitchMm }) => insertThreadDepthMm + (chamferTurns + 1) * pitchMm
})
