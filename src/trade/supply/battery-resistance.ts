import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const batteryOhm = formula('batteryOhm', {
  says: 'resistance of a 12 V starting battery in the cold, estimated from its cold-cranking current',
  symbol: 'Rb',
  equation: '(12.6-7.2)/I',
  inputs: { crankingA: ['I', 20, 3000] },
  source: SOURCES['sae-j537'],
  of: ({ crankingA }) => (12.6 - 7.2) / crankingA
})
