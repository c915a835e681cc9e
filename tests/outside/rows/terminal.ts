import type { ElectricalRow } from './electrical-row.ts'

export const TERMINAL_ROWS: readonly ElectricalRow[] = [
  {
    id: 'terminal-001',
    quantity: 'resistance of each bonding-jumper connection',
    item: '',
    condition: '',
    value: 0.003,
    unit: 'ohm',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-189',
    label: 'read-secondary'
  },
  {
    id: 'terminal-002',
    quantity: 'bond of exposed equipment frame to structure',
    item: '',
    condition: '',
    value: 0.0025,
    unit: 'ohm',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-188f',
    label: 'read-secondary'
  },
  {
    id: 'terminal-003',
    quantity: 'do not ground wiring directly to',
    item: 'magnesium parts',
    condition: '',
    value: 'forbidden',
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-189a',
    label: 'read-secondary'
  },
  {
    id: 'terminal-004',
    quantity: 'no self-tapping screw for a bond',
    item: '',
    condition: '',
    value: 'forbidden',
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-188e',
    label: 'read-secondary'
  },
  {
    id: 'terminal-005',
    quantity: 'facility bond',
    item: '',
    condition: '',
    value: 0.001,
    unit: 'ohm',
    source: 'MIL-HDBK-419A vol. 2 par. 1.13.4',
    label: 'read-secondary'
  },
  {
    id: 'terminal-010',
    quantity: 'bond class R, equipment to structure',
    item: '',
    condition: '',
    value: 0.0025,
    unit: 'ohm',
    source: 'MIL-STD-464 / MIL-B-5087 class R',
    label: 'memory'
  },
  {
    id: 'terminal-011',
    quantity: 'drop across one connection under load',
    item: '12 V',
    condition: '',
    value: 0.1,
    unit: 'V',
    source: 'workshop voltage-drop test',
    label: 'common practice'
  },
  {
    id: 'terminal-012',
    quantity: 'drop across the ground side under load',
    item: '12 V',
    condition: '',
    value: 0.2,
    unit: 'V',
    source: 'workshop voltage-drop test',
    label: 'common practice'
  },
  {
    id: 'terminal-014',
    quantity: 'contact resistance of a 30 A plug contact',
    item: '',
    condition: '',
    value: 0.55,
    unit: 'mohm',
    source: "a connector maker's sheet, as noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'terminal-015',
    quantity: 'temperature rise of a 30 A plug contact',
    item: '30 A',
    condition: '12 AWG lead',
    value: 27.8,
    unit: 'K',
    source: "a connector maker's sheet, as noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'terminal-017',
    quantity: 'crimp tensile strength',
    item: 'wire not tabulated',
    condition: '',
    value: 60,
    unit: '% of wire tensile',
    source: 'NASA-STD-8739.4 par. 13.7.4',
    label: 'read-secondary'
  },
  {
    id: 'terminal-018',
    quantity: 'pull force',
    item: 'AWG 24 copper',
    condition: '',
    value: 36,
    unit: 'N',
    source: 'NASA-STD-8739.4 Table 13-1',
    label: 'read-secondary'
  },
  {
    id: 'terminal-020',
    quantity: 'terminal pull-out',
    item: 'AWG 18',
    condition: 'MIL-T-7928 class 2',
    value: 38,
    unit: 'lbf',
    source: 'MIL-T-7928 quoted by an aircraft maintenance shop',
    label: 'read-secondary'
  },
  {
    id: 'terminal-022',
    quantity: 'crimping of solid or solder-tinned wire',
    item: '',
    condition: '',
    value: 'forbidden',
    unit: '',
    source: 'NASA-STD-8739.4 par. 4.3',
    label: 'read-secondary'
  },
  {
    id: 'terminal-023',
    quantity: 'method of crimp drop test',
    item: '',
    condition: 'steady after 2 h; from grip centre to 76.2 mm back on the core; subtract the wire',
    value: 'method',
    unit: '',
    source: 'SAE standard for low-tension terminals',
    label: 'read-secondary'
  }
]
