import { fact, formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const stackMm = formula('stackMm', {
  says: 'one more thickness under the shoulder',
  symbol: 't',
  equation: 't0 + t1',
  inputs: { belowMm: ['t0', 0, 100], layerMm: ['t1', 0, 50] },
  source: SOURCES.arithmetic,
  of: ({ belowMm, layerMm }) => belowMm + layerMm
})

export const runOutGapMm = formula('runOutGapMm', {
  says: "full thread of the hole left over when the shoulder lands; negative: the part's thread jams and leaves that gap",
  symbol: 'g1',
  equation: 'lt + t - k - lp',
  inputs: { threadDepthMm: ['lt', -300, 500], stackMm: ['t', 0, 150], crushMm: ['k', 0, 50], threadLengthMm: ['lp', 0.2, 300] },
  source: SOURCES.geometry,
  of: ({ threadDepthMm, stackMm, crushMm, threadLengthMm }) => threadDepthMm + stackMm - crushMm - threadLengthMm
})

export const floorGapMm = formula('floorGapMm', {
  says: "gap below the part's end when the shoulder lands; negative: the end stands on the floor and leaves that gap",
  symbol: 'g2',
  equation: 'hf + t - k - lo',
  inputs: { floorDepthMm: ['hf', -100, 500], stackMm: ['t', 0, 150], crushMm: ['k', 0, 50], overallMm: ['lo', 0.2, 300] },
  source: SOURCES.geometry,
  of: ({ floorDepthMm, stackMm, crushMm, overallMm }) => floorDepthMm + stackMm - crushMm - overallMm
})

export const bareRunOutGapMm = formula('bareRunOutGapMm', {
  says: 'full thread of the hole left over with nothing under the shoulder; negative: the gap left there',
  symbol: 'g3',
  equation: 'lt - lp',
  inputs: { threadDepthMm: ['lt', -300, 500], threadLengthMm: ['lp', 0.2, 300] },
  source: SOURCES.geometry,
  of: ({ threadDepthMm, threadLengthMm }) => threadDepthMm - threadLengthMm
})

export const bareFloorGapMm = formula('bareFloorGapMm', {
  says: "gap below the part's end with nothing under the shoulder; negative: the gap left there",
  symbol: 'g4',
  equation: 'hf - lo',
  inputs: { floorDepthMm: ['hf', -100, 500], overallMm: ['lo', 0.2, 300] },
  source: SOURCES.geometry,
  of: ({ floorDepthMm, overallMm }) => floorDepthMm - overallMm
})

export const shoulderTurns = formula('shoulderTurns', {
  says: 'turns by hand to the shoulder, nought with the first full thread at the end of the part level with the face',
  symbol: 'z',
  equation: '(lp - t)/P',
  inputs: { threadLengthMm: ['lp', 0.2, 300], stackMm: ['t', 0, 150], pitchMm: ['P', 0.2, 8] },
  source: SOURCES.geometry,
  of: ({ threadLengthMm, stackMm, pitchMm }) => (threadLengthMm - stackMm) / pitchMm
})

export const runOutStackMm = formula('runOutStackMm', {
  says: 'stack before crush that just clears the thread run-out',
  symbol: 't1',
  equation: 'lp - lt + k',
  inputs: { threadLengthMm: ['lp', 0.2, 300], threadDepthMm: ['lt', -300, 500], crushMm: ['k', 0, 50] },
  source: SOURCES.geometry,
  of: ({ threadLengthMm, threadDepthMm, crushMm }) => threadLengthMm - threadDepthMm + crushMm
})

export const floorStackMm = formula('floorStackMm', {
  says: 'stack before crush that just clears the floor',
  symbol: 't2',
  equation: 'lo - hf + k',
  inputs: { overallMm: ['lo', 0.2, 300], floorDepthMm: ['hf', -100, 500], crushMm: ['k', 0, 50] },
  source: SOURCES.geometry,
  of: ({ overallMm, floorDepthMm, crushMm }) => overallMm - floorDepthMm + crushMm
})

/** What a feeler gauge finds with nothing under the shoulder. */
export const FEEL_GAP = fact('feelGapMm', {
  says: 'gap under the shoulder to feel for, seated by hand with nothing under it',
  symbol: 'gf',
  source: SOURCES.geometry
})

/** Stack before crush at which the least of the gaps is nought. */
export const LEAST_STACK = fact('leastStackMm', {
  says: 'least stack that works, before crush; negative: none is needed',
  symbol: 'tmin',
  source: SOURCES.geometry
})
