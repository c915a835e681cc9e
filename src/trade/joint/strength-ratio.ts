import { formula } from '../../formula/formula.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { SOURCES } from '../../formula/source.ts'

// Information beside the strip loads only: no result of a joint contains these factors.

export const strengthRatio = formula('strengthRatio', {
  says: 'load that strips the casting over load that strips the part',
  symbol: 'RS',
  equation: 'Fn/Fs',
  inputs: { internalStripLoadN: ['Fn', 0.01, 1e9], externalStripLoadN: ['Fs', 0.01, 1e9] },
  source: SOURCES.alexander,
  of: ({ internalStripLoadN, externalStripLoadN }) => internalStripLoadN / externalStripLoadN
})

export const dilationFactor = formula('dilationFactor', {
  says: 'what is left of both strip loads where thin metal around the hole gives way',
  symbol: 'C1',
  equation: '3.8·s/d - (s/d)^2 - 2.61',
  inputs: { bossMm: ['s', 1, 600], majorMm: ['d', 0.8, 300] },
  source: SOURCES.alexander,
  of: ({ bossMm, majorMm }) => (3.8 * bossMm) / majorMm - (bossMm / majorMm) ** 2 - 2.61
})

export const screwBendingFactor = formula('screwBendingFactor', {
  says: "what is left of the part's strip load as its thread bends, in a stronger casting",
  symbol: 'C2',
  equation: '5.594 - 13.682·RS + 14.107·RS^2 - 6.057·RS^3 + 0.9353·RS^4',
  inputs: { strengthRatio: ['RS', 1, 2.2] },
  source: SOURCES.alexander,
  of: ({ strengthRatio: rs }) => 5.594 - 13.682 * rs + 14.107 * rs ** 2 - 6.057 * rs ** 3 + 0.9353 * rs ** 4
})

export const castingBendingFactor = formula('castingBendingFactor', {
  says: "what is left of the casting's strip load as its thread bends, under a stronger part",
  symbol: 'C3',
  equation: '0.728 + 1.769·RS - 2.896·RS^2 + 1.296·RS^3',
  inputs: { strengthRatio: ['RS', 0.4, 1] },
  source: SOURCES.alexander,
  of: ({ strengthRatio: rs }) => 0.728 + 1.769 * rs - 2.896 * rs ** 2 + 1.296 * rs ** 3
})

/** Of the stronger thread, whatever the ratio (Alexander, memory). */
const STRONGER = 0.897

/** The two bending factors at one strength ratio. */
export function bendingFactors(x: { readonly strengthRatio: number }) {
  const weakCasting = x.strengthRatio < 1
  return {
    screwBendingFactor: x.strengthRatio > 1 ? screwBendingFactor(x) : STRONGER,
    castingBendingFactor: weakCasting ? castingBendingFactor(x) : STRONGER
  }
}

/** 1 in a thick wall; below 1.4 diameters of metal the formula says nothing. */
export function dilation({ bossMm, majorMm }: { readonly bossMm: number; readonly majorMm: number }): number {
  if (bossMm >= 1.9 * majorMm) return 1
  if (bossMm >= 1.4 * majorMm) return dilationFactor({ bossMm, majorMm })
  throw new NoAnswer(
    'less than 1.4 thread diameters of metal around the hole: no factor for its giving way is known',
    'leave more metal around the hole'
  )
}
