import type { ElectricalRow } from './electrical-row.ts'

export const PROTECTION_ROWS: readonly ElectricalRow[] = [
  {
    id: 'protection-001',
    quantity: 'largest circuit breaker',
    item: 'AWG 22 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 5,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-002',
    quantity: 'largest fuse',
    item: 'AWG 22 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 5,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-003',
    quantity: 'largest circuit breaker',
    item: 'AWG 20 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 7.5,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-004',
    quantity: 'largest fuse',
    item: 'AWG 20 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 5,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-005',
    quantity: 'largest circuit breaker',
    item: 'AWG 18 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 10,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-006',
    quantity: 'largest fuse',
    item: 'AWG 18 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 10,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-007',
    quantity: 'largest circuit breaker',
    item: 'AWG 16 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 15,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-008',
    quantity: 'largest fuse',
    item: 'AWG 16 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 10,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-009',
    quantity: 'largest circuit breaker',
    item: 'AWG 14 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 20,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-010',
    quantity: 'largest fuse',
    item: 'AWG 14 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 15,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-011',
    quantity: 'largest circuit breaker',
    item: 'AWG 12 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 30,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-012',
    quantity: 'largest fuse',
    item: 'AWG 12 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 20,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-013',
    quantity: 'largest circuit breaker',
    item: 'AWG 10 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 40,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-014',
    quantity: 'largest fuse',
    item: 'AWG 10 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 30,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-015',
    quantity: 'largest circuit breaker',
    item: 'AWG 8 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 50,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-016',
    quantity: 'largest fuse',
    item: 'AWG 8 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 50,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-017',
    quantity: 'largest circuit breaker',
    item: 'AWG 6 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 80,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-018',
    quantity: 'largest fuse',
    item: 'AWG 6 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 70,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-019',
    quantity: 'largest circuit breaker',
    item: 'AWG 4 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 100,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-020',
    quantity: 'largest fuse',
    item: 'AWG 4 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 70,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-021',
    quantity: 'largest circuit breaker',
    item: 'AWG 2 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 125,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-022',
    quantity: 'largest fuse',
    item: 'AWG 2 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 100,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-023',
    quantity: 'largest fuse',
    item: 'AWG 1 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 150,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-024',
    quantity: 'largest fuse',
    item: 'AWG 0 copper',
    condition:
      '57 °C (135 °F), to 30 000 ft, bundle of 15 or more wires with at most 20 % of bundle capacity in use; protector at 24-29 °C (basis of chart from memory)',
    value: 150,
    unit: 'A',
    source: 'FAA AC 43.13-1B ch. 11 Table 11-3',
    label: 'read-secondary'
  },
  {
    id: 'protection-025',
    quantity: 'wire must carry',
    item: '',
    condition: '',
    value: 'more than the protector rating including its time-current curve',
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-48',
    label: 'read-secondary'
  },
  {
    id: 'protection-026',
    quantity: 'place of protector',
    item: '',
    condition: '',
    value: 'as close as possible to the source bus',
    unit: '',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-47',
    label: 'read-secondary'
  },
  {
    id: 'protection-027',
    quantity: 'glass fuse gate, UL 248-14',
    item: '100 % of rating',
    condition: '',
    value: 'carries; rise at most 75 K',
    unit: '',
    source: "a fuse maker's selection guide",
    label: 'read-secondary'
  },
  {
    id: 'protection-028',
    quantity: 'glass fuse gate, UL 248-14',
    item: '135 % of rating',
    condition: '',
    value: 'opens within 3600 s',
    unit: '',
    source: "a fuse maker's selection guide",
    label: 'read-secondary'
  },
  {
    id: 'protection-031',
    quantity: 'interrupting rating at 250 V AC, UL-listed glass fuse',
    item: '0-1 A',
    condition: '',
    value: 35,
    unit: 'A',
    source: "a fuse maker's selection guide",
    label: 'read-secondary'
  },
  {
    id: 'protection-032',
    quantity: 'interrupting rating at 250 V AC, UL-listed glass fuse',
    item: '1.1-3.5 A',
    condition: '',
    value: 100,
    unit: 'A',
    source: "a fuse maker's selection guide",
    label: 'read-secondary'
  },
  {
    id: 'protection-034',
    quantity: 'interrupting rating at 250 V AC, UL-listed glass fuse',
    item: '10.1-15 A',
    condition: '',
    value: 750,
    unit: 'A',
    source: "a fuse maker's selection guide",
    label: 'read-secondary'
  },
  {
    id: 'protection-036',
    quantity: 'continuous load of a fuse',
    item: '',
    condition: '25 °C',
    value: 75,
    unit: '% of rating',
    source: "a fuse maker's design guide, quoted in a public course",
    label: 'read-secondary'
  },
  {
    id: 'protection-037',
    quantity: 'continuous load of a fuse',
    item: '',
    condition: 'case at or below 85 °C',
    value: 65,
    unit: '% of rating',
    source: 'ECSS-Q-ST-30-11C Rev.2 Table 6-17',
    label: 'read-secondary'
  },
  {
    id: 'protection-039',
    quantity: 'voltage rating and breaking capacity of blade fuses',
    item: '32 V or 58 V, up to 100 A',
    condition: '',
    value: 1000,
    unit: 'A',
    source: 'ISO 8820-3:2015 scope',
    label: 'read-secondary'
  },
  {
    id: 'protection-040',
    quantity: 'standard blade ratings',
    item: 'type C (medium)',
    condition: '',
    value: '1 2 3 4 5 7.5 10 15 20 25 30 35 40',
    unit: 'A',
    source: 'ISO 8820-3 and a maker series',
    label: 'read-secondary'
  },
  {
    id: 'protection-041',
    quantity: 'standard blade ratings',
    item: 'type F (miniature)',
    condition: '',
    value: '2 3 4 5 7.5 10 15 20 25 30',
    unit: 'A',
    source: 'blade fuse overview page',
    label: 'read-secondary'
  },
  {
    id: 'protection-043',
    quantity: 'opening time, minimum',
    item: 'blade fuse, medium (ATO form), 32 V',
    condition: '110 %',
    value: 360000,
    unit: 's',
    source: "a fuse maker's sheet, noted in public design records",
    label: 'memory'
  },
  {
    id: 'protection-044',
    quantity: 'opening time, minimum',
    item: 'blade fuse, medium (ATO form), 32 V',
    condition: '135 %',
    value: 0.75,
    unit: 's',
    source: "a fuse maker's sheet, noted in public design records",
    label: 'read-secondary'
  },
  {
    id: 'protection-045',
    quantity: 'opening time, maximum',
    item: 'blade fuse, medium (ATO form), 32 V',
    condition: '135 %',
    value: 600,
    unit: 's',
    source: "a fuse maker's sheet, noted in public design records",
    label: 'read-secondary'
  },
  {
    id: 'protection-046',
    quantity: 'opening time, minimum',
    item: 'blade fuse, medium (ATO form), 32 V',
    condition: '160 %',
    value: 0.25,
    unit: 's',
    source: "a fuse maker's sheet, noted in public design records",
    label: 'read-secondary'
  },
  {
    id: 'protection-047',
    quantity: 'opening time, maximum',
    item: 'blade fuse, medium (ATO form), 32 V',
    condition: '160 %',
    value: 50,
    unit: 's',
    source: "a fuse maker's sheet, noted in public design records",
    label: 'read-secondary'
  },
  {
    id: 'protection-048',
    quantity: 'opening time, minimum',
    item: 'blade fuse, medium (ATO form), 32 V',
    condition: '200 %',
    value: 0.15,
    unit: 's',
    source: "a fuse maker's sheet, noted in public design records",
    label: 'read-secondary'
  },
  {
    id: 'protection-049',
    quantity: 'opening time, maximum',
    item: 'blade fuse, medium (ATO form), 32 V',
    condition: '200 %',
    value: 5,
    unit: 's',
    source: "a fuse maker's sheet, noted in public design records",
    label: 'read-secondary'
  },
  {
    id: 'protection-053',
    quantity: 'no opening at 100 %',
    item: 'blade fuse, medium (ATO form), 32 V 35/40 A',
    condition: '',
    value: 360000,
    unit: 's',
    source: "a fuse maker's sheet, noted in public design records",
    label: 'read-secondary'
  },
  {
    id: 'protection-063',
    quantity: 'typical cold resistance',
    item: 'blade fuse, medium (ATO form), 32 V 25 A',
    condition: '',
    value: 2.52,
    unit: 'mohm',
    source: "a fuse maker's sheet, noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'protection-064',
    quantity: 'melting I2t',
    item: 'blade fuse, medium (ATO form), 32 V 25 A',
    condition: '',
    value: 1000,
    unit: 'A2s',
    source: "a fuse maker's sheet, noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'protection-065',
    quantity: 'typical voltage drop at rated current',
    item: 'blade fuse, medium (ATO form), 32 V 40 A',
    condition: '',
    value: 96,
    unit: 'mV',
    source: "a fuse maker's sheet, noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'protection-066',
    quantity: 'typical cold resistance',
    item: 'blade fuse, medium (ATO form), 32 V 40 A',
    condition: '',
    value: 1.44,
    unit: 'mohm',
    source: "a fuse maker's sheet, noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'protection-067',
    quantity: 'melting I2t',
    item: 'blade fuse, medium (ATO form), 32 V 40 A',
    condition: '',
    value: 3300,
    unit: 'A2s',
    source: "a fuse maker's sheet, noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'protection-070',
    quantity: 'typical cold resistance',
    item: 'blade fuse, large, 30 A',
    condition: '',
    value: 1.9,
    unit: 'mohm',
    source: "a fuse maker's sheet, noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'protection-071',
    quantity: 'melting I2t',
    item: 'blade fuse, large, 30 A',
    condition: '',
    value: 4100,
    unit: 'A2s',
    source: "a fuse maker's sheet, noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'protection-074',
    quantity: 'typical voltage drop at rated current',
    item: 'blade fuse, large (MAXI form), 40 A',
    condition: '',
    value: 75,
    unit: 'mV',
    source: "a fuse maker's sheet, noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'protection-075',
    quantity: 'typical cold resistance',
    item: 'blade fuse, large (MAXI form), 40 A',
    condition: '',
    value: 1.4,
    unit: 'mohm',
    source: "a fuse maker's sheet, noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'protection-076',
    quantity: 'melting I2t',
    item: 'blade fuse, large (MAXI form), 40 A',
    condition: '',
    value: 8500,
    unit: 'A2s',
    source: "a fuse maker's sheet, noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'protection-077',
    quantity: 'allowed continuous load',
    item: 'blade fuse, medium (ATO form), 32 V 10 A',
    condition: '20 °C ambient, maker margin 20 % included',
    value: 10,
    unit: 'A',
    source: "a fuse maker's sheet, noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'protection-078',
    quantity: 'allowed continuous load',
    item: 'blade fuse, medium (ATO form), 32 V 10 A',
    condition: '65 °C ambient, maker margin 20 % included',
    value: 8,
    unit: 'A',
    source: "a fuse maker's sheet, noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'protection-080',
    quantity: 'allowed continuous load',
    item: 'blade fuse, medium (ATO form), 32 V 25 A',
    condition: '65 °C ambient, maker margin 20 % included',
    value: 19,
    unit: 'A',
    source: "a fuse maker's sheet, noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'protection-081',
    quantity: 'allowed continuous load',
    item: 'blade fuse, large (MAXI form), 40 A',
    condition: '20 °C ambient',
    value: 40,
    unit: 'A',
    source: "a fuse maker's sheet, noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'protection-082',
    quantity: 'allowed continuous load',
    item: 'blade fuse, large (MAXI form), 40 A',
    condition: '65 °C ambient',
    value: 34,
    unit: 'A',
    source: "a fuse maker's sheet, noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'protection-084',
    quantity: 'allowed continuous load',
    item: 'blade fuse, large (MAXI form), 40 A',
    condition: '110 °C ambient',
    value: 25,
    unit: 'A',
    source: "a fuse maker's sheet, noted in a public design record",
    label: 'read-secondary'
  },
  {
    id: 'protection-086',
    quantity: 'multiply the wanted rating by',
    item: 'thermal breaker, snap-in type',
    condition: '-30 °C',
    value: 0.76,
    unit: '',
    source: "a thermal circuit-breaker maker's sheet",
    label: 'read-secondary'
  },
  {
    id: 'protection-088',
    quantity: 'multiply the wanted rating by',
    item: 'thermal breaker, snap-in type',
    condition: '-10 °C',
    value: 0.84,
    unit: '',
    source: "a thermal circuit-breaker maker's sheet",
    label: 'read-secondary'
  },
  {
    id: 'protection-089',
    quantity: 'multiply the wanted rating by',
    item: 'thermal breaker, snap-in type',
    condition: '0 °C',
    value: 0.92,
    unit: '',
    source: "a thermal circuit-breaker maker's sheet",
    label: 'read-secondary'
  },
  {
    id: 'protection-090',
    quantity: 'multiply the wanted rating by',
    item: 'thermal breaker, snap-in type',
    condition: '23 °C',
    value: 1,
    unit: '',
    source: "a thermal circuit-breaker maker's sheet",
    label: 'read-secondary'
  },
  {
    id: 'protection-091',
    quantity: 'multiply the wanted rating by',
    item: 'thermal breaker, snap-in type',
    condition: '40 °C',
    value: 1.08,
    unit: '',
    source: "a thermal circuit-breaker maker's sheet",
    label: 'read-secondary'
  },
  {
    id: 'protection-093',
    quantity: 'multiply the wanted rating by',
    item: 'thermal breaker, snap-in type',
    condition: '60 °C',
    value: 1.24,
    unit: '',
    source: "a thermal circuit-breaker maker's sheet",
    label: 'read-secondary'
  },
  {
    id: 'protection-094',
    quantity: 'thermal trip band, IEC 60898 type breaker',
    item: '1.13 x rating',
    condition: '30 °C',
    value: 'no trip within 3600 s (to 63 A)',
    unit: '',
    source: "a breaker maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'protection-095',
    quantity: 'thermal trip band, IEC 60898 type breaker',
    item: '1.45 x rating',
    condition: '30 °C',
    value: 'trips within 3600 s (to 63 A)',
    unit: '',
    source: "a breaker maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'protection-097',
    quantity: 'hydraulic-magnetic breaker',
    item: 'delay curve dependent',
    condition: '25 °C',
    value: 'holds 100 %, must trip at 125 % or 135 %',
    unit: '',
    source: "a breaker maker's curve sheet",
    label: 'read-secondary'
  },
  {
    id: 'protection-099',
    quantity: 'thermal-magnetic trip setting factor',
    item: '40 °C reference',
    condition: '45 °C',
    value: 0.975,
    unit: '',
    source: "a breaker maker's technical supplement",
    label: 'read-secondary'
  },
  {
    id: 'protection-101',
    quantity: 'thermal-magnetic trip setting factor',
    item: '40 °C reference',
    condition: '55 °C',
    value: 0.925,
    unit: '',
    source: "a breaker maker's technical supplement",
    label: 'read-secondary'
  },
  {
    id: 'protection-103',
    quantity: 'thermal-magnetic trip setting factor',
    item: '40 °C reference',
    condition: '65 °C',
    value: 0.875,
    unit: '',
    source: "a breaker maker's technical supplement",
    label: 'read-secondary'
  },
  {
    id: 'protection-105',
    quantity: 'trip time of 200 A setting at 400 A',
    item: '40 °C',
    condition: '',
    value: 100,
    unit: 's',
    source: "a breaker maker's technical supplement, worked example",
    label: 'read-secondary'
  },
  {
    id: 'protection-107',
    quantity: 'every ungrounded conductor needs a fuse or a manually reset trip-free breaker',
    item: 'boat, gasoline',
    condition: '',
    value: 'required',
    unit: '',
    source: '33 CFR 183.455(a)',
    label: 'read-secondary'
  },
  {
    id: 'protection-108',
    quantity: 'largest distance of protector from source, along the conductor, no sheath',
    item: 'boat, gasoline',
    condition: 'only where it cannot be put at the source',
    value: 7,
    unit: 'in',
    source: '33 CFR 183.455(b)(1)',
    label: 'read-secondary'
  },
  {
    id: 'protection-109',
    quantity: 'largest distance of protector from source, along the conductor, in a sheath or enclosure all the way',
    item: 'boat, gasoline',
    condition: 'only where it cannot be put within 7 in',
    value: 40,
    unit: 'in',
    source: '33 CFR 183.455(b)(2)',
    label: 'read-secondary'
  },
  {
    id: 'protection-110',
    quantity: 'largest protector rating',
    item: 'boat, circuit under 50 V',
    condition: 'of the table 5 value for the conductor size (183.425)',
    value: 150,
    unit: '%',
    source: '33 CFR 183.455(c)(1)',
    label: 'read-secondary'
  }
]
