// Mass and moment.
import { rowsOf, type ThermalRow } from './thermal-row.ts'

const S1 = 'US mechanic knowledge-test question, reproduced with its solution on an exam-preparation site; arithmetic redone'
const S2 = 'FAA AC 43.13-1B par. 10-2c, verbatim mirror'

export const MASS: readonly ThermalRow[] = [
  ...rowsOf({ quantity: 'new empty weight', unit: 'lb', tolerance: '0', source: S1, label: 'read-secondary' }, [
    [
      'mb1-0',
      'empty 2886 lb, moment 101673.78 lb-in; remove 2 seats 15 lb each at +71; add cabinet 97 lb at +71, seat 20 lb at +71, radio 30 lb at +94',
      '3003'
    ]
  ]),
  ...rowsOf({ quantity: 'new moment', unit: 'lb-in', tolerance: '0.01', source: S1, label: 'read-secondary' }, [
    [
      'mb1-1',
      'empty 2886 lb, moment 101673.78 lb-in; remove 2 seats 15 lb each at +71; add cabinet 97 lb at +71, seat 20 lb at +71, radio 30 lb at +94',
      '110670.78'
    ]
  ]),
  ...rowsOf({ quantity: 'old CG', unit: 'in', tolerance: '0.01', source: S1, label: 'read-secondary' }, [
    [
      'mb1-2',
      'empty 2886 lb, moment 101673.78 lb-in; remove 2 seats 15 lb each at +71; add cabinet 97 lb at +71, seat 20 lb at +71, radio 30 lb at +94',
      '35.23'
    ]
  ]),
  ...rowsOf({ quantity: 'new CG', unit: 'in', tolerance: '0.001', source: S1, label: 'read-secondary' }, [
    [
      'mb1-3',
      'empty 2886 lb, moment 101673.78 lb-in; remove 2 seats 15 lb each at +71; add cabinet 97 lb at +71, seat 20 lb at +71, radio 30 lb at +94',
      '36.853'
    ]
  ]),
  ...rowsOf({ quantity: 'CG shift aft', unit: 'in', tolerance: '0.001', source: S1, label: 'read-secondary' }, [
    [
      'mb1-4',
      'empty 2886 lb, moment 101673.78 lb-in; remove 2 seats 15 lb each at +71; add cabinet 97 lb at +71, seat 20 lb at +71, radio 30 lb at +94',
      '1.623'
    ]
  ]),
  ...rowsOf(
    {
      quantity: 'negligible weight change, empty weight under 5000 lb',
      unit: 'lb or less',
      tolerance: '',
      source: S2,
      label: 'read-secondary'
    },
    [['neg-1', '', '1']]
  ),
  ...rowsOf(
    {
      quantity: 'negligible weight change, empty weight 5000..50000 lb',
      unit: 'lb or less',
      tolerance: '',
      source: S2,
      label: 'read-secondary'
    },
    [['neg-2', '', '2']]
  )
]
