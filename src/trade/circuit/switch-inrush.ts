import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** Current at switch-on over steady current. `highRatio` null: no upper figure seen. */
export const INRUSH = [
  { load: 'lamp', lowRatio: 10, highRatio: 15, source: SOURCES['relay-maker'] },
  { load: 'motor', lowRatio: 5, highRatio: 6, source: SOURCES['relay-module'] },
  { load: 'solenoid', lowRatio: 10, highRatio: null, source: SOURCES['relay-module'] },
  { load: 'capacitive', lowRatio: 20, highRatio: null, source: SOURCES['relay-module'] },
  // Seconds long: take the upper one unless the maker says.
  { load: 'ptc heater', lowRatio: 2, highRatio: 3, source: SOURCES['ptc-inrush'] }
] as const

/** A relay maker rates a contact for lamps at a fifth of its resistive rating. */
export const LAMP_SHARE_PERCENT = 20

export const ownRatio = formula('ownRatio', {
  says: 'current at switch-on over steady current, of a load whose resistance follows its temperature',
  symbol: 'm',
  equation: 'R/Rs',
  inputs: { settledOhm: ['R', 1e-6, 1e9], startOhm: ['Rs', 1e-7, 1e10] },
  source: SOURCES.ohm,
  of: ({ settledOhm, startOhm }) => settledOhm / startOhm
})

export const makeA = formula('makeA', {
  says: 'current that the contacts close on',
  symbol: 'Im',
  equation: 'I·m',
  inputs: { currentA: ['I', 0, 1000], coldRatio: ['m', 0.1, 50] },
  source: SOURCES['ptc-inrush'],
  of: ({ currentA, coldRatio }) => currentA * coldRatio
})
