import type { ElectricalRow } from './electrical-row.ts'

export const AMPACITY_ROWS: readonly ElectricalRow[] = [
  {
    id: 'ampacity-001',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 24',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 2.5,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-003',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 24',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 5,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-004',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 22',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 3,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-006',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 22',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 6,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-007',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 20',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 4,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-009',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 20',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 9,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-010',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 18',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 6,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-012',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 18',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 12,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-013',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 16',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 7,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-015',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 16',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 14,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-016',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 14',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 10,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-018',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 14',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 18,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-019',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 12',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 13,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-021',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 12',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 25,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-022',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 10',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 17,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-024',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 10',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 32,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-025',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 8',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 38,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-027',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 8',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 71,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-028',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 6',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 50,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-030',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 6',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 97,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-031',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 4',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 68,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-033',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 4',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 133,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-034',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 2',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 95,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-036',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 2',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 179,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-037',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 1',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 113,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-039',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 1',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 210,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-040',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 0',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 128,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-042',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 0',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 243,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-043',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 00',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 147,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-045',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 00',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 285,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-046',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 000',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 172,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-048',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 000',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 335,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-049',
    quantity: 'continuous current, 105 °C conductor rating',
    item: 'AWG 0000',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 204,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-051',
    quantity: 'continuous current, 200 °C conductor rating',
    item: 'AWG 0000',
    condition: 'bundle; 70 °C ambient; 60 000 ft; 33+ wires (24-10) or 9 wires (8 and larger); 20 % of harness capacity in use',
    value: 395,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-9',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-052',
    quantity: 'allowable amperage, 60 °C insulation',
    item: 'AWG 18',
    condition: 'stranded copper, 30 °C ambient',
    value: 10,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-053',
    quantity: 'allowable amperage, 75 °C insulation',
    item: 'AWG 18',
    condition: 'stranded copper, 30 °C ambient',
    value: 10,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-056',
    quantity: 'allowable amperage, 105 °C insulation',
    item: 'AWG 18',
    condition: 'stranded copper, 30 °C ambient',
    value: 20,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-058',
    quantity: 'allowable amperage, 200 °C insulation',
    item: 'AWG 18',
    condition: 'stranded copper, 30 °C ambient',
    value: 25,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-059',
    quantity: 'allowable amperage, 60 °C insulation',
    item: 'AWG 16',
    condition: 'stranded copper, 30 °C ambient',
    value: 15,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-060',
    quantity: 'allowable amperage, 75 °C insulation',
    item: 'AWG 16',
    condition: 'stranded copper, 30 °C ambient',
    value: 15,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-063',
    quantity: 'allowable amperage, 105 °C insulation',
    item: 'AWG 16',
    condition: 'stranded copper, 30 °C ambient',
    value: 25,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-065',
    quantity: 'allowable amperage, 200 °C insulation',
    item: 'AWG 16',
    condition: 'stranded copper, 30 °C ambient',
    value: 35,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-066',
    quantity: 'allowable amperage, 60 °C insulation',
    item: 'AWG 14',
    condition: 'stranded copper, 30 °C ambient',
    value: 20,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-067',
    quantity: 'allowable amperage, 75 °C insulation',
    item: 'AWG 14',
    condition: 'stranded copper, 30 °C ambient',
    value: 20,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-070',
    quantity: 'allowable amperage, 105 °C insulation',
    item: 'AWG 14',
    condition: 'stranded copper, 30 °C ambient',
    value: 35,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-072',
    quantity: 'allowable amperage, 200 °C insulation',
    item: 'AWG 14',
    condition: 'stranded copper, 30 °C ambient',
    value: 45,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-073',
    quantity: 'allowable amperage, 60 °C insulation',
    item: 'AWG 12',
    condition: 'stranded copper, 30 °C ambient',
    value: 25,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-074',
    quantity: 'allowable amperage, 75 °C insulation',
    item: 'AWG 12',
    condition: 'stranded copper, 30 °C ambient',
    value: 25,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-077',
    quantity: 'allowable amperage, 105 °C insulation',
    item: 'AWG 12',
    condition: 'stranded copper, 30 °C ambient',
    value: 45,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-079',
    quantity: 'allowable amperage, 200 °C insulation',
    item: 'AWG 12',
    condition: 'stranded copper, 30 °C ambient',
    value: 55,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-080',
    quantity: 'allowable amperage, 60 °C insulation',
    item: 'AWG 10',
    condition: 'stranded copper, 30 °C ambient',
    value: 40,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-081',
    quantity: 'allowable amperage, 75 °C insulation',
    item: 'AWG 10',
    condition: 'stranded copper, 30 °C ambient',
    value: 40,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-084',
    quantity: 'allowable amperage, 105 °C insulation',
    item: 'AWG 10',
    condition: 'stranded copper, 30 °C ambient',
    value: 60,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-086',
    quantity: 'allowable amperage, 200 °C insulation',
    item: 'AWG 10',
    condition: 'stranded copper, 30 °C ambient',
    value: 70,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-087',
    quantity: 'allowable amperage, 60 °C insulation',
    item: 'AWG 8',
    condition: 'stranded copper, 30 °C ambient',
    value: 55,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-088',
    quantity: 'allowable amperage, 75 °C insulation',
    item: 'AWG 8',
    condition: 'stranded copper, 30 °C ambient',
    value: 65,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-091',
    quantity: 'allowable amperage, 105 °C insulation',
    item: 'AWG 8',
    condition: 'stranded copper, 30 °C ambient',
    value: 80,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-093',
    quantity: 'allowable amperage, 200 °C insulation',
    item: 'AWG 8',
    condition: 'stranded copper, 30 °C ambient',
    value: 100,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-094',
    quantity: 'allowable amperage, 60 °C insulation',
    item: 'AWG 6',
    condition: 'stranded copper, 30 °C ambient',
    value: 80,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-095',
    quantity: 'allowable amperage, 75 °C insulation',
    item: 'AWG 6',
    condition: 'stranded copper, 30 °C ambient',
    value: 95,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-098',
    quantity: 'allowable amperage, 105 °C insulation',
    item: 'AWG 6',
    condition: 'stranded copper, 30 °C ambient',
    value: 120,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-100',
    quantity: 'allowable amperage, 200 °C insulation',
    item: 'AWG 6',
    condition: 'stranded copper, 30 °C ambient',
    value: 135,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-101',
    quantity: 'allowable amperage, 60 °C insulation',
    item: 'AWG 4',
    condition: 'stranded copper, 30 °C ambient',
    value: 105,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-102',
    quantity: 'allowable amperage, 75 °C insulation',
    item: 'AWG 4',
    condition: 'stranded copper, 30 °C ambient',
    value: 125,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-105',
    quantity: 'allowable amperage, 105 °C insulation',
    item: 'AWG 4',
    condition: 'stranded copper, 30 °C ambient',
    value: 160,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-107',
    quantity: 'allowable amperage, 200 °C insulation',
    item: 'AWG 4',
    condition: 'stranded copper, 30 °C ambient',
    value: 180,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-108',
    quantity: 'allowable amperage, 60 °C insulation',
    item: 'AWG 3',
    condition: 'stranded copper, 30 °C ambient',
    value: 120,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-109',
    quantity: 'allowable amperage, 75 °C insulation',
    item: 'AWG 3',
    condition: 'stranded copper, 30 °C ambient',
    value: 145,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-112',
    quantity: 'allowable amperage, 105 °C insulation',
    item: 'AWG 3',
    condition: 'stranded copper, 30 °C ambient',
    value: 180,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-114',
    quantity: 'allowable amperage, 200 °C insulation',
    item: 'AWG 3',
    condition: 'stranded copper, 30 °C ambient',
    value: 210,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-115',
    quantity: 'allowable amperage, 60 °C insulation',
    item: 'AWG 2',
    condition: 'stranded copper, 30 °C ambient',
    value: 140,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-116',
    quantity: 'allowable amperage, 75 °C insulation',
    item: 'AWG 2',
    condition: 'stranded copper, 30 °C ambient',
    value: 170,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-119',
    quantity: 'allowable amperage, 105 °C insulation',
    item: 'AWG 2',
    condition: 'stranded copper, 30 °C ambient',
    value: 210,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-121',
    quantity: 'allowable amperage, 200 °C insulation',
    item: 'AWG 2',
    condition: 'stranded copper, 30 °C ambient',
    value: 240,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-122',
    quantity: 'allowable amperage, 60 °C insulation',
    item: 'AWG 1',
    condition: 'stranded copper, 30 °C ambient',
    value: 165,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-123',
    quantity: 'allowable amperage, 75 °C insulation',
    item: 'AWG 1',
    condition: 'stranded copper, 30 °C ambient',
    value: 195,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-126',
    quantity: 'allowable amperage, 105 °C insulation',
    item: 'AWG 1',
    condition: 'stranded copper, 30 °C ambient',
    value: 245,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-128',
    quantity: 'allowable amperage, 200 °C insulation',
    item: 'AWG 1',
    condition: 'stranded copper, 30 °C ambient',
    value: 280,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-129',
    quantity: 'allowable amperage, 60 °C insulation',
    item: 'AWG 0',
    condition: 'stranded copper, 30 °C ambient',
    value: 195,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-130',
    quantity: 'allowable amperage, 75 °C insulation',
    item: 'AWG 0',
    condition: 'stranded copper, 30 °C ambient',
    value: 230,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-133',
    quantity: 'allowable amperage, 105 °C insulation',
    item: 'AWG 0',
    condition: 'stranded copper, 30 °C ambient',
    value: 285,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-135',
    quantity: 'allowable amperage, 200 °C insulation',
    item: 'AWG 0',
    condition: 'stranded copper, 30 °C ambient',
    value: 325,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-136',
    quantity: 'allowable amperage, 60 °C insulation',
    item: 'AWG 00',
    condition: 'stranded copper, 30 °C ambient',
    value: 225,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-137',
    quantity: 'allowable amperage, 75 °C insulation',
    item: 'AWG 00',
    condition: 'stranded copper, 30 °C ambient',
    value: 265,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-140',
    quantity: 'allowable amperage, 105 °C insulation',
    item: 'AWG 00',
    condition: 'stranded copper, 30 °C ambient',
    value: 330,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-142',
    quantity: 'allowable amperage, 200 °C insulation',
    item: 'AWG 00',
    condition: 'stranded copper, 30 °C ambient',
    value: 370,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-143',
    quantity: 'allowable amperage, 60 °C insulation',
    item: 'AWG 000',
    condition: 'stranded copper, 30 °C ambient',
    value: 260,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-144',
    quantity: 'allowable amperage, 75 °C insulation',
    item: 'AWG 000',
    condition: 'stranded copper, 30 °C ambient',
    value: 310,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-147',
    quantity: 'allowable amperage, 105 °C insulation',
    item: 'AWG 000',
    condition: 'stranded copper, 30 °C ambient',
    value: 385,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-149',
    quantity: 'allowable amperage, 200 °C insulation',
    item: 'AWG 000',
    condition: 'stranded copper, 30 °C ambient',
    value: 430,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-150',
    quantity: 'allowable amperage, 60 °C insulation',
    item: 'AWG 0000',
    condition: 'stranded copper, 30 °C ambient',
    value: 300,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-151',
    quantity: 'allowable amperage, 75 °C insulation',
    item: 'AWG 0000',
    condition: 'stranded copper, 30 °C ambient',
    value: 360,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-154',
    quantity: 'allowable amperage, 105 °C insulation',
    item: 'AWG 0000',
    condition: 'stranded copper, 30 °C ambient',
    value: 445,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-156',
    quantity: 'allowable amperage, 200 °C insulation',
    item: 'AWG 0000',
    condition: 'stranded copper, 30 °C ambient',
    value: 510,
    unit: 'A',
    source: '33 CFR 183.425 Table 5',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-157',
    quantity: 'allowable amperage inside engine space, 105 °C insulation',
    item: 'AWG 18',
    condition: '50 °C ambient, factor 0.85',
    value: 17,
    unit: 'A',
    source: '33 CFR 183.425 note 1 as printed by a marine wire maker',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-159',
    quantity: 'allowable amperage inside engine space, 105 °C insulation',
    item: 'AWG 14',
    condition: '50 °C ambient, factor 0.85',
    value: 29.75,
    unit: 'A',
    source: '33 CFR 183.425 note 1 as printed by a marine wire maker',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-161',
    quantity: 'allowable amperage inside engine space, 105 °C insulation',
    item: 'AWG 10',
    condition: '50 °C ambient, factor 0.85',
    value: 51,
    unit: 'A',
    source: '33 CFR 183.425 note 1 as printed by a marine wire maker',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-163',
    quantity: 'allowable amperage inside engine space, 105 °C insulation',
    item: 'AWG 6',
    condition: '50 °C ambient, factor 0.85',
    value: 102,
    unit: 'A',
    source: '33 CFR 183.425 note 1 as printed by a marine wire maker',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-165',
    quantity: 'allowable amperage inside engine space, 105 °C insulation',
    item: 'AWG 3',
    condition: '50 °C ambient, factor 0.85',
    value: 153,
    unit: 'A',
    source: '33 CFR 183.425 note 1 as printed by a marine wire maker',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-166',
    quantity: 'allowable amperage inside engine space, 105 °C insulation',
    item: 'AWG 2',
    condition: '50 °C ambient, factor 0.85',
    value: 178,
    unit: 'A',
    source: '33 CFR 183.425 note 1 as printed by a marine wire maker',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-168',
    quantity: 'allowable amperage inside engine space, 105 °C insulation',
    item: 'AWG 0',
    condition: '50 °C ambient, factor 0.85',
    value: 242,
    unit: 'A',
    source: '33 CFR 183.425 note 1 as printed by a marine wire maker',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-169',
    quantity: 'allowable amperage inside engine space, 105 °C insulation',
    item: 'AWG 00',
    condition: '50 °C ambient, factor 0.85',
    value: 280,
    unit: 'A',
    source: '33 CFR 183.425 note 1 as printed by a marine wire maker',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-171',
    quantity: 'allowable amperage inside engine space, 105 °C insulation',
    item: 'AWG 0000',
    condition: '50 °C ambient, factor 0.85',
    value: 378,
    unit: 'A',
    source: '33 CFR 183.425 note 1 as printed by a marine wire maker',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-172',
    quantity: 'engine-space factor',
    item: '105 °C insulation',
    condition: '30 -> 50 °C ambient',
    value: 0.85,
    unit: '',
    source: '33 CFR 183.425 note 1',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-173',
    quantity: 'engine-space factor',
    item: '60 °C insulation',
    condition: '30 -> 50 °C ambient',
    value: 0.58,
    unit: '',
    source: '33 CFR 183.425 note 1',
    label: 'memory'
  },
  {
    id: 'ampacity-175',
    quantity: 'engine-space factor',
    item: '80 °C insulation',
    condition: '30 -> 50 °C ambient',
    value: 0.78,
    unit: '',
    source: '33 CFR 183.425 note 1',
    label: 'memory'
  },
  {
    id: 'ampacity-177',
    quantity: 'engine-space factor',
    item: '125 °C insulation',
    condition: '30 -> 50 °C ambient',
    value: 0.89,
    unit: '',
    source: '33 CFR 183.425 note 1',
    label: 'memory'
  },
  {
    id: 'ampacity-178',
    quantity: 'engine-space factor',
    item: '200 °C insulation',
    condition: '30 -> 50 °C ambient',
    value: 1.0,
    unit: '',
    source: '33 CFR 183.425 note 1',
    label: 'memory'
  },
  {
    id: 'ampacity-179',
    quantity: 'factor for current-carrying conductors bundled',
    item: '3',
    condition: '',
    value: 0.7,
    unit: '',
    source: 'USCG electrical compliance guideline / ABYC E-11, quoted by a marine wire maker',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-180',
    quantity: 'factor for current-carrying conductors bundled',
    item: '4 to 6',
    condition: '',
    value: 0.6,
    unit: '',
    source: 'USCG electrical compliance guideline / ABYC E-11, quoted by a marine wire maker',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-181',
    quantity: 'factor for current-carrying conductors bundled',
    item: '7 to 24',
    condition: '',
    value: 0.5,
    unit: '',
    source: 'USCG electrical compliance guideline / ABYC E-11, quoted by a marine wire maker',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-182',
    quantity: 'factor for current-carrying conductors bundled',
    item: '25 and more',
    condition: '',
    value: 0.4,
    unit: '',
    source: 'USCG electrical compliance guideline / ABYC E-11, quoted by a marine wire maker',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-185',
    quantity: 'allowable amperage, 105 °C boat cable',
    item: 'AWG 12',
    condition: '3 bundled, outside',
    value: 31.5,
    unit: 'A',
    source: 'cable maker table for UL 1426 cable (base value * 0.85 inside * bundle factor)',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-186',
    quantity: 'allowable amperage, 105 °C boat cable',
    item: 'AWG 12',
    condition: '7-24 bundled, inside',
    value: 19.1,
    unit: 'A',
    source: 'cable maker table for UL 1426 cable (base value * 0.85 inside * bundle factor)',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-189',
    quantity: 'allowable amperage, 105 °C boat cable',
    item: 'AWG 16',
    condition: '7-24 bundled, inside',
    value: 10.6,
    unit: 'A',
    source: 'cable maker table for UL 1426 cable (base value * 0.85 inside * bundle factor)',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-190',
    quantity: 'allowable amperage, 105 °C boat cable',
    item: 'AWG 16',
    condition: '3 bundled, outside',
    value: 17.5,
    unit: 'A',
    source: 'cable maker table for UL 1426 cable (base value * 0.85 inside * bundle factor)',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-192',
    quantity: 'allowable amperage, 105 °C boat cable',
    item: 'AWG 18',
    condition: '4-6 bundled, outside',
    value: 12,
    unit: 'A',
    source: 'cable maker table for UL 1426 cable (base value * 0.85 inside * bundle factor)',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-193',
    quantity: 'bundle derating factor K, every wire loaded',
    item: '1 wires',
    condition: '',
    value: 1,
    unit: '',
    source: 'ECSS-Q-ST-30-11C Rev.2 Table 6-41',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-194',
    quantity: 'bundle derating factor K, every wire loaded',
    item: '2 wires',
    condition: '',
    value: 0.9,
    unit: '',
    source: 'ECSS-Q-ST-30-11C Rev.2 Table 6-41',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-195',
    quantity: 'bundle derating factor K, every wire loaded',
    item: '3 wires',
    condition: '',
    value: 0.81,
    unit: '',
    source: 'ECSS-Q-ST-30-11C Rev.2 Table 6-41',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-197',
    quantity: 'bundle derating factor K, every wire loaded',
    item: '5 wires',
    condition: '',
    value: 0.71,
    unit: '',
    source: 'ECSS-Q-ST-30-11C Rev.2 Table 6-41',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-199',
    quantity: 'bundle derating factor K, every wire loaded',
    item: '7 wires',
    condition: '',
    value: 0.62,
    unit: '',
    source: 'ECSS-Q-ST-30-11C Rev.2 Table 6-41',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-201',
    quantity: 'bundle derating factor K, every wire loaded',
    item: '9 wires',
    condition: '',
    value: 0.59,
    unit: '',
    source: 'ECSS-Q-ST-30-11C Rev.2 Table 6-41',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-204',
    quantity: 'factor L for partly loaded bundle',
    item: 'below 25 % of wires loaded',
    condition: '',
    value: 1.2,
    unit: '',
    source: 'ECSS-Q-ST-30-11C Rev.2 Table 6-42',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-205',
    quantity: 'factor L for partly loaded bundle',
    item: '25 to 50 %',
    condition: '',
    value: 1.1,
    unit: '',
    source: 'ECSS-Q-ST-30-11C Rev.2 Table 6-42',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-206',
    quantity: 'factor L for partly loaded bundle',
    item: 'above 50 %',
    condition: '',
    value: 1.0,
    unit: '',
    source: 'ECSS-Q-ST-30-11C Rev.2 Table 6-42',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-207',
    quantity: 'free-air current from figure 11-4a',
    item: 'AWG 14',
    condition: 'rise 150 °C (200 °C wire, 50 °C ambient)',
    value: 47,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-68/69, worked example no. 2',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-208',
    quantity: 'altitude factor',
    item: '',
    condition: '20 000 ft',
    value: 0.91,
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-68/69, worked example no. 2',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-209',
    quantity: 'after altitude',
    item: 'AWG 14',
    condition: '0.91*47',
    value: 42.77,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-68/69, worked example no. 2',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-210',
    quantity: 'bundle factor',
    item: '8 wires',
    condition: '60 % loaded',
    value: 0.6,
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-68/69, worked example no. 2',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-211',
    quantity: 'Imax',
    item: 'AWG 14',
    condition: '0.6*42.77',
    value: 26,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-68/69, worked example no. 2',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-215',
    quantity: 'free-air current AWG 20',
    item: '10 wires AWG 20 + 25 wires AWG 22',
    condition: 'rise 140 °C (200 °C wire, 60 °C ambient)',
    value: 21.5,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-69 harness example',
    label: 'memory'
  },
  {
    id: 'ampacity-216',
    quantity: 'free-air current AWG 22',
    item: '10 wires AWG 20 + 25 wires AWG 22',
    condition: 'rise 140 °C',
    value: 16.2,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-69 harness example',
    label: 'memory'
  },
  {
    id: 'ampacity-217',
    quantity: 'bundle factor, 35 wires, 20 % loaded',
    item: '10 wires AWG 20 + 25 wires AWG 22',
    condition: '',
    value: 0.52,
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-69 harness example',
    label: 'memory'
  },
  {
    id: 'ampacity-220',
    quantity: 'altitude factor 60 000 ft',
    item: '10 wires AWG 20 + 25 wires AWG 22',
    condition: '',
    value: 0.79,
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-69 harness example',
    label: 'memory'
  },
  {
    id: 'ampacity-224',
    quantity: 'indicative current M22759/16 150 °C wire',
    item: 'AWG 24',
    condition: '80 °C ambient',
    value: 4.5,
    unit: 'A',
    source: "a motorsport electronics maker's wiring appendix",
    label: 'read-secondary'
  },
  {
    id: 'ampacity-225',
    quantity: 'indicative current M22759/16 150 °C wire',
    item: 'AWG 24',
    condition: '100 °C ambient',
    value: 4,
    unit: 'A',
    source: "a motorsport electronics maker's wiring appendix",
    label: 'read-secondary'
  },
  {
    id: 'ampacity-228',
    quantity: 'indicative current M22759/16 150 °C wire',
    item: 'AWG 20',
    condition: '80 °C ambient',
    value: 8,
    unit: 'A',
    source: "a motorsport electronics maker's wiring appendix",
    label: 'read-secondary'
  },
  {
    id: 'ampacity-229',
    quantity: 'indicative current M22759/16 150 °C wire',
    item: 'AWG 20',
    condition: '100 °C ambient',
    value: 6,
    unit: 'A',
    source: "a motorsport electronics maker's wiring appendix",
    label: 'read-secondary'
  },
  {
    id: 'ampacity-230',
    quantity: 'indicative current M22759/16 150 °C wire',
    item: 'AWG 18',
    condition: '80 °C ambient',
    value: 11,
    unit: 'A',
    source: "a motorsport electronics maker's wiring appendix",
    label: 'read-secondary'
  },
  {
    id: 'ampacity-231',
    quantity: 'indicative current M22759/16 150 °C wire',
    item: 'AWG 18',
    condition: '100 °C ambient',
    value: 9,
    unit: 'A',
    source: "a motorsport electronics maker's wiring appendix",
    label: 'read-secondary'
  },
  {
    id: 'ampacity-234',
    quantity: 'indicative current M22759/16 150 °C wire',
    item: 'AWG 14',
    condition: '80 °C ambient',
    value: 22,
    unit: 'A',
    source: "a motorsport electronics maker's wiring appendix",
    label: 'read-secondary'
  },
  {
    id: 'ampacity-235',
    quantity: 'indicative current M22759/16 150 °C wire',
    item: 'AWG 14',
    condition: '100 °C ambient',
    value: 18,
    unit: 'A',
    source: "a motorsport electronics maker's wiring appendix",
    label: 'read-secondary'
  },
  {
    id: 'ampacity-236',
    quantity: 'smallest conductor run singly',
    item: '',
    condition: '',
    value: 16,
    unit: 'AWG',
    source: '33 CFR 183.425(e)',
    label: 'read'
  },
  {
    id: 'ampacity-237',
    quantity: 'smallest conductor in a multiconductor sheath',
    item: '',
    condition: 'may leave the sheath by at most 30 in',
    value: 18,
    unit: 'AWG',
    source: '33 CFR 183.425(d),(f)',
    label: 'read'
  },
  {
    id: 'ampacity-238',
    quantity: 'smallest conductor run singly, longer than 200 mm',
    item: '',
    condition: '',
    value: 1.0,
    unit: 'mm2',
    source: 'ISO 10133:2012 7.7',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-239',
    quantity: 'smallest conductor in a sheath',
    item: '',
    condition: 'may leave it by at most 800 mm',
    value: 0.75,
    unit: 'mm2',
    source: 'ISO 10133:2012 7.7',
    label: 'read-secondary'
  },
  {
    id: 'ampacity-240',
    quantity: 'support spacing of conductors',
    item: '',
    condition: '',
    value: 450,
    unit: 'mm',
    source: 'ISO 10133:2012 7.3',
    label: 'read-secondary'
  }
]
