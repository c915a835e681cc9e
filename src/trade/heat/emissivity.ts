import { SOURCES } from '../../formula/source.ts'
import { type Figure, figure, span } from './figure.ts'

const { 'camera-emissivity': camera, 'thermometer-emissivity': thermometer } = SOURCES

/** Emissivity of surfaces near room temperature. */
export const EMISSIVITIES = {
  'aluminium-as-cast': span(0.46, 0.47, camera),
  'aluminium-rough': span(0.06, 0.07, camera),
  'aluminium-plate': figure(0.09, camera),
  'aluminium-oxidised': span(0.2, 0.4, thermometer),
  'aluminium-strongly-oxidised': span(0.2, 0.3, camera),
  'aluminium-paint': figure(0.4, camera),
  'black-lacquer': figure(0.97, camera),
  'heat-resistant-lacquer': figure(0.92, camera),
  'cast-iron': figure(0.81, camera),
  'cast-iron-oxidised': span(0.6, 0.95, thermometer),
  'iron-rusty': figure(0.69, camera),
  'brass-tarnished': figure(0.22, camera),
  'copper-oxidised': span(0.6, 0.7, camera)
} as const satisfies Record<string, Figure>

/** The blackest of them: no surface that nobody named is taken for more. */
export const MOST_EMISSIVITY = Math.max(...Object.values(EMISSIVITIES).map(({ high }) => high))

export type EmissivityName = keyof typeof EMISSIVITIES
