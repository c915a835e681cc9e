import type { ElectricalRow } from './electrical-row.ts'

export const METER_ROWS: readonly ElectricalRow[] = [
  {
    id: 'meter-001',
    quantity: 'reading 100.0 V with +/-(1 % + 2 digits)',
    item: 'low',
    condition: '',
    value: 98.8,
    unit: 'V',
    source: "an instrument maker's primer",
    label: 'read'
  },
  {
    id: 'meter-002',
    quantity: 'reading 100.0 V with +/-(1 % + 2 digits)',
    item: 'high',
    condition: '',
    value: 101.2,
    unit: 'V',
    source: "an instrument maker's primer",
    label: 'read'
  },
  {
    id: 'meter-003',
    quantity: 'typical test-lead resistance low',
    item: '',
    condition: '',
    value: 0.2,
    unit: 'ohm',
    source: "an instrument maker's primer",
    label: 'read'
  },
  {
    id: 'meter-005',
    quantity: 'hand meter basic accuracy, best',
    item: '',
    condition: '',
    value: 0.1,
    unit: '% + 1 digit',
    source: "an instrument maker's primer",
    label: 'read'
  },
  {
    id: 'meter-007',
    quantity: 'hand meter DC volts',
    item: '',
    condition: '',
    value: '0.5 % + 2 digits',
    unit: '',
    source: 'typical hand-meter sheet',
    label: 'memory'
  },
  {
    id: 'meter-008',
    quantity: 'hand meter ohms',
    item: '',
    condition: '',
    value: '0.9 % + 1 to 2 digits',
    unit: '',
    source: 'typical hand-meter sheet',
    label: 'memory'
  },
  {
    id: 'meter-009',
    quantity: 'DC clamp',
    item: '',
    condition: '',
    value: '2 % + 5 to 10 counts',
    unit: '',
    source: 'typical clamp sheet',
    label: 'memory'
  },
  {
    id: 'meter-012',
    quantity: '1 % of a 12 V reading against charge state',
    item: '',
    condition: '',
    value: 120,
    unit: 'mV',
    source: 'a mailing-list answer',
    label: 'read-secondary'
  }
]
