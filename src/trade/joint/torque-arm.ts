import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

// Torque over preload is a length, the torque arm. Both forms of T against F are such an arm.

export const nutFactorArmMm = formula('nutFactorArmMm', {
  says: 'torque arm by nut factor',
  symbol: 'a',
  equation: 'K·d',
  inputs: { nutFactor: ['K', 0.02, 1], majorMm: ['d', 0.8, 300] },
  source: SOURCES.shigley,
  of: ({ nutFactor, majorMm }) => nutFactor * majorMm
})

export const frictionFactor = formula('frictionFactor', {
  says: 'friction that thread and bearing share where only a nut factor is known',
  symbol: 'μ',
  equation: '(K·d - P/(2·π))/(d2/√(3) + Dkm/2)',
  inputs: {
    nutFactor: ['K', 0.02, 1],
    majorMm: ['d', 0.8, 300],
    pitchMm: ['P', 0.2, 8],
    pitchDiameterMm: ['d2', 0.5, 300],
    bearingDiameterMm: ['Dkm', 0.8, 600]
  },
  source: SOURCES['iso-16047'],
  of: ({ nutFactor, majorMm, pitchMm, pitchDiameterMm, bearingDiameterMm }) =>
    (nutFactor * majorMm - pitchMm / (2 * Math.PI)) / (pitchDiameterMm / Math.sqrt(3) + bearingDiameterMm / 2)
})

export const threadArmMm = formula('threadArmMm', {
  says: 'thread part of the torque arm: pitch and friction of the flanks',
  symbol: 'at',
  equation: 'P/(2·π) + d2·μt/√(3)',
  inputs: { pitchMm: ['P', 0.2, 8], pitchDiameterMm: ['d2', 0.5, 300], threadFrictionFactor: ['μt', 0, 1] },
  source: SOURCES['iso-16047'],
  of: ({ pitchMm, pitchDiameterMm, threadFrictionFactor }) =>
    pitchMm / (2 * Math.PI) + (pitchDiameterMm * threadFrictionFactor) / Math.sqrt(3)
})

export const longArmMm = formula('longArmMm', {
  says: 'torque arm by the friction of thread and bearing',
  symbol: 'a',
  equation: 'at + Dkm/2·μb',
  inputs: { threadArmMm: ['at', 0.01, 300], bearingDiameterMm: ['Dkm', 0.8, 600], bearingFrictionFactor: ['μb', 0, 1] },
  source: SOURCES['iso-16047'],
  of: ({ threadArmMm, bearingDiameterMm, bearingFrictionFactor }) => threadArmMm + (bearingDiameterMm / 2) * bearingFrictionFactor
})
