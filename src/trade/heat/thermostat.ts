import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const cutMarginK = formula('cutMarginK', {
  says: 'opening of the thermostat above the target',
  symbol: 'mc',
  equation: 'To - Tt',
  inputs: { offC: ['To', -100, 500], targetC: ['Tt', -100, 2000] },
  source: SOURCES.arithmetic,
  of: ({ offC, targetC }) => offC - targetC
})

/** Between opening and closing the metal cools: that is the coldest that a thermostat holds it at. */
export const onMarginK = formula('onMarginK', {
  says: 'closing of the thermostat above the target',
  symbol: 'mn',
  equation: 'Tn - Tt',
  inputs: { onC: ['Tn', -100, 500], targetC: ['Tt', -100, 2000] },
  source: SOURCES.arithmetic,
  of: ({ onC, targetC }) => onC - targetC
})
