import { fact, formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const plainBelowFaceMm = formula('plainBelowFaceMm', {
  says: 'plain length of the part (neck, undercut) below the face, seated; negative: it ends inside the stack',
  symbol: 'lm',
  equation: 'u - t + k',
  inputs: { undercutMm: ['u', 0, 300], stackMm: ['t', 0, 150], crushMm: ['k', 0, 50] },
  source: SOURCES.geometry,
  of: ({ undercutMm, stackMm, crushMm }) => undercutMm - stackMm + crushMm
})

export const partBelowFaceMm = formula('partBelowFaceMm', {
  says: "full thread of the part below the mouth's countersink, or below its own plain length where that ends deeper, seated",
  symbol: 'le1',
  equation: 'lp - t + k - lm',
  inputs: { threadLengthMm: ['lp', 0.2, 300], stackMm: ['t', 0, 150], crushMm: ['k', 0, 50], mouthMm: ['lm', 0, 300] },
  source: SOURCES.geometry,
  of: ({ threadLengthMm, stackMm, crushMm, mouthMm }) => threadLengthMm - stackMm + crushMm - mouthMm
})

export const holeBelowMouthMm = formula('holeBelowMouthMm', {
  says: "full thread of the hole below the mouth's countersink, or below the part's plain length where that ends deeper",
  symbol: 'le2',
  equation: 'lt - lm',
  inputs: { threadDepthMm: ['lt', -300, 500], mouthMm: ['lm', 0, 300] },
  source: SOURCES.geometry,
  of: ({ threadDepthMm, mouthMm }) => threadDepthMm - mouthMm
})

/** Full threads of the part in full threads of the hole. */
export const ENGAGED = fact('engagedMm', { says: 'full threads engaged, seated', symbol: 'LE', source: SOURCES.geometry })

export const greatestStackMm = formula('greatestStackMm', {
  says: 'greatest stack, before crush, that leaves the engagement wanted',
  symbol: 'tmax',
  equation: 'lp + k - lm - l0',
  inputs: { threadLengthMm: ['lp', 0.2, 300], crushMm: ['k', 0, 50], mouthMm: ['lm', 0, 50], needMm: ['l0', 0, 300] },
  source: SOURCES.geometry,
  of: ({ threadLengthMm, crushMm, mouthMm, needMm }) => threadLengthMm + crushMm - mouthMm - needMm
})

export const engagedMarginMm = formula('engagedMarginMm', {
  says: 'engagement beyond what is wanted',
  symbol: 'y',
  equation: 'LE - l0',
  inputs: { engagedMm: ['LE', -500, 500], needMm: ['l0', 0, 300] },
  source: SOURCES.arithmetic,
  of: ({ engagedMm, needMm }) => engagedMm - needMm
})
