import type { ElectricalRow } from './electrical-row.ts'

export const SWITCH_ROWS: readonly ElectricalRow[] = [
  {
    id: 'switch-001',
    quantity: 'switch nominal rating = load current x',
    item: 'lamp',
    condition: '28 V DC',
    value: 8,
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-4',
    label: 'read-secondary'
  },
  {
    id: 'switch-002',
    quantity: 'switch nominal rating = load current x',
    item: 'inductive (relay, solenoid)',
    condition: '28 V DC',
    value: 4,
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-4',
    label: 'read-secondary'
  },
  {
    id: 'switch-003',
    quantity: 'switch nominal rating = load current x',
    item: 'resistive (heater)',
    condition: '28 V DC',
    value: 2,
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-4',
    label: 'read-secondary'
  },
  {
    id: 'switch-004',
    quantity: 'switch nominal rating = load current x',
    item: 'motor',
    condition: '28 V DC',
    value: 3,
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-4',
    label: 'read-secondary'
  },
  {
    id: 'switch-005',
    quantity: 'switch nominal rating = load current x',
    item: 'lamp',
    condition: '12 V DC',
    value: 5,
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-4',
    label: 'read-secondary'
  },
  {
    id: 'switch-006',
    quantity: 'switch nominal rating = load current x',
    item: 'inductive (relay, solenoid)',
    condition: '12 V DC',
    value: 2,
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-4',
    label: 'read-secondary'
  },
  {
    id: 'switch-007',
    quantity: 'switch nominal rating = load current x',
    item: 'resistive (heater)',
    condition: '12 V DC',
    value: 1,
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-4',
    label: 'read-secondary'
  },
  {
    id: 'switch-008',
    quantity: 'switch nominal rating = load current x',
    item: 'motor',
    condition: '12 V DC',
    value: 2,
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-4',
    label: 'read-secondary'
  },
  {
    id: 'switch-009',
    quantity: 'no AC-rated switch in a DC circuit',
    item: '',
    condition: '',
    value: 'forbidden',
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 page 11-17 warning',
    label: 'read-secondary'
  },
  {
    id: 'switch-010',
    quantity: 'silver contacts need at least (voltage)',
    item: '',
    condition: '',
    value: 8,
    unit: 'V',
    source: 'FAA AC 43.13-1B ch. 11 page 11-17 item g',
    label: 'read-secondary'
  },
  {
    id: 'switch-012',
    quantity: 'lamp inrush',
    item: '',
    condition: '',
    value: 10,
    unit: 'x steady current',
    source: 'a switch maker page',
    label: 'read'
  },
  {
    id: 'switch-013',
    quantity: 'motor inrush',
    item: '',
    condition: '',
    value: 6,
    unit: 'x steady current',
    source: 'a switch maker page',
    label: 'read'
  },
  {
    id: 'switch-014',
    quantity: 'lamp inrush low',
    item: '',
    condition: '',
    value: 10,
    unit: 'x steady current',
    source: 'a relay maker page',
    label: 'read'
  },
  {
    id: 'switch-015',
    quantity: 'lamp inrush high',
    item: '',
    condition: '',
    value: 15,
    unit: 'x steady current',
    source: 'a relay maker page',
    label: 'read'
  },
  {
    id: 'switch-017',
    quantity: 'solenoid inrush low',
    item: '',
    condition: '',
    value: 10,
    unit: 'x steady current',
    source: 'a relay module manual',
    label: 'read-secondary'
  },
  {
    id: 'switch-019',
    quantity: 'motor inrush low',
    item: '',
    condition: '',
    value: 5,
    unit: 'x steady current',
    source: 'a relay module manual',
    label: 'read-secondary'
  },
  {
    id: 'switch-021',
    quantity: 'capacitive inrush low',
    item: '',
    condition: '',
    value: 20,
    unit: 'x steady current',
    source: 'a relay module manual',
    label: 'read-secondary'
  },
  {
    id: 'switch-023',
    quantity: 'lamp rating of a contact',
    item: '',
    condition: '',
    value: 20,
    unit: '% of resistive rating',
    source: 'a relay maker page',
    label: 'read'
  },
  {
    id: 'switch-024',
    quantity: 'small snap switch: 10 A at 125/250 V AC',
    item: 'DC rating at 250 V DC',
    condition: '',
    value: 0.15,
    unit: 'A',
    source: 'an article on aircraft switch ratings quoting a maker',
    label: 'read-secondary'
  }
]
