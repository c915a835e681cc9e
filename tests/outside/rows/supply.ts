import type { ElectricalRow } from './electrical-row.ts'

export const SUPPLY_ROWS: readonly ElectricalRow[] = [
  {
    id: 'supply-001',
    quantity: 'continuous load over generator rating without monitoring',
    item: '',
    condition: '',
    value: 80,
    unit: '%',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-35a',
    label: 'read-secondary'
  },
  {
    id: 'supply-002',
    quantity: 'low-voltage warning',
    item: '14 V system',
    condition: '',
    value: 13,
    unit: 'V',
    source: 'FAA AC 43.13-1B ch. 11 par. 11-35b',
    label: 'read-secondary'
  },
  {
    id: 'supply-004',
    quantity: 'time on battery after loss of generation',
    item: 'small aeroplanes',
    condition: '',
    value: 30,
    unit: 'min',
    source: '14 CFR 23.1353(h) (2014 text)',
    label: 'memory'
  },
  {
    id: 'supply-006',
    quantity: 'load analysis must use',
    item: '',
    condition: '',
    value: 'probable combinations for probable durations',
    unit: '',
    source: '14 CFR 23.1351(a)(2); ASTM F2490 sect. 4',
    label: 'read-secondary'
  },
  {
    id: 'supply-007',
    quantity: 'open-circuit voltage',
    item: '100 % charge',
    condition: '26.7 °C, rested, flooded',
    value: 12.65,
    unit: 'V',
    source: "a battery maker's FAQ table",
    label: 'read'
  },
  {
    id: 'supply-008',
    quantity: 'specific gravity',
    item: '100 % charge',
    condition: '26.7 °C',
    value: 1.265,
    unit: '',
    source: "a battery maker's FAQ table",
    label: 'read'
  },
  {
    id: 'supply-011',
    quantity: 'open-circuit voltage',
    item: '50 % charge',
    condition: '26.7 °C, rested, flooded',
    value: 12.24,
    unit: 'V',
    source: "a battery maker's FAQ table",
    label: 'read'
  },
  {
    id: 'supply-012',
    quantity: 'specific gravity',
    item: '50 % charge',
    condition: '26.7 °C',
    value: 1.19,
    unit: '',
    source: "a battery maker's FAQ table",
    label: 'read'
  },
  {
    id: 'supply-015',
    quantity: 'open-circuit voltage',
    item: '0 % charge',
    condition: '26.7 °C, rested, flooded',
    value: 11.89,
    unit: 'V',
    source: "a battery maker's FAQ table",
    label: 'read'
  },
  {
    id: 'supply-016',
    quantity: 'specific gravity',
    item: '0 % charge',
    condition: '26.7 °C',
    value: 1.12,
    unit: '',
    source: "a battery maker's FAQ table",
    label: 'read'
  },
  {
    id: 'supply-022',
    quantity: 'voltmeter correction, 12 V battery',
    item: '-1.1 °C',
    condition: 'add to reading',
    value: -0.12,
    unit: 'V',
    source: "a battery maker's FAQ table",
    label: 'read'
  },
  {
    id: 'supply-025',
    quantity: 'voltmeter correction, 12 V battery',
    item: '15.6 °C',
    condition: 'add to reading',
    value: -0.048,
    unit: 'V',
    source: "a battery maker's FAQ table",
    label: 'read'
  },
  {
    id: 'supply-026',
    quantity: 'Peukert, rated-hour form',
    item: '',
    condition: '',
    value: 't = H*(C/(I*H))^k',
    unit: 'h',
    source: 'common statement',
    label: 'read-secondary'
  },
  {
    id: 'supply-027',
    quantity: 'Peukert, one-ampere form',
    item: '',
    condition: '',
    value: 'Cp = I^k*t',
    unit: 'A^k·h',
    source: 'common statement',
    label: 'read-secondary'
  },
  {
    id: 'supply-028',
    quantity: 'one-ampere form',
    item: 'Cp=100, k=1.2, I=5',
    condition: '',
    value: 14.5,
    unit: 'h',
    source: 'an electrical engineering web article',
    label: 'read-secondary'
  },
  {
    id: 'supply-029',
    quantity: 'capacity delivered, percent of 100 Ah (20 h rate)',
    item: 'n=1.1',
    condition: '10 A',
    value: 93,
    unit: '%',
    source: "a battery monitor maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-030',
    quantity: 'capacity delivered, percent of 100 Ah (20 h rate)',
    item: 'n=1.1',
    condition: '25 A',
    value: 85,
    unit: '%',
    source: "a battery monitor maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-031',
    quantity: 'capacity delivered, percent of 100 Ah (20 h rate)',
    item: 'n=1.1',
    condition: '50 A',
    value: 79,
    unit: '%',
    source: "a battery monitor maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-032',
    quantity: 'capacity delivered, percent of 100 Ah (20 h rate)',
    item: 'n=1.1',
    condition: '100 A',
    value: 74,
    unit: '%',
    source: "a battery monitor maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-033',
    quantity: 'capacity delivered, percent of 100 Ah (20 h rate)',
    item: 'n=1.1',
    condition: '200 A',
    value: 69,
    unit: '%',
    source: "a battery monitor maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-039',
    quantity: 'capacity delivered, percent of 100 Ah (20 h rate)',
    item: 'n=1.25',
    condition: '10 A',
    value: 84,
    unit: '%',
    source: "a battery monitor maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-040',
    quantity: 'capacity delivered, percent of 100 Ah (20 h rate)',
    item: 'n=1.25',
    condition: '25 A',
    value: 67,
    unit: '%',
    source: "a battery monitor maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-041',
    quantity: 'capacity delivered, percent of 100 Ah (20 h rate)',
    item: 'n=1.25',
    condition: '50 A',
    value: 56,
    unit: '%',
    source: "a battery monitor maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-042',
    quantity: 'capacity delivered, percent of 100 Ah (20 h rate)',
    item: 'n=1.25',
    condition: '100 A',
    value: 47,
    unit: '%',
    source: "a battery monitor maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-043',
    quantity: 'capacity delivered, percent of 100 Ah (20 h rate)',
    item: 'n=1.25',
    condition: '200 A',
    value: 40,
    unit: '%',
    source: "a battery monitor maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-049',
    quantity: 'capacity delivered, percent of 100 Ah (20 h rate)',
    item: 'n=1.4',
    condition: '10 A',
    value: 76,
    unit: '%',
    source: "a battery monitor maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-050',
    quantity: 'capacity delivered, percent of 100 Ah (20 h rate)',
    item: 'n=1.4',
    condition: '25 A',
    value: 53,
    unit: '%',
    source: "a battery monitor maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-051',
    quantity: 'capacity delivered, percent of 100 Ah (20 h rate)',
    item: 'n=1.4',
    condition: '50 A',
    value: 40,
    unit: '%',
    source: "a battery monitor maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-052',
    quantity: 'capacity delivered, percent of 100 Ah (20 h rate)',
    item: 'n=1.4',
    condition: '100 A',
    value: 30,
    unit: '%',
    source: "a battery monitor maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-053',
    quantity: 'capacity delivered, percent of 100 Ah (20 h rate)',
    item: 'n=1.4',
    condition: '200 A',
    value: 23,
    unit: '%',
    source: "a battery monitor maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-059',
    quantity: 'exponent from a test',
    item: '200 Ah, 50 A',
    condition: 'delivered 134 Ah (67 %)',
    value: 1.25,
    unit: '',
    source: "a battery monitor maker's manual, example 1",
    label: 'read-secondary'
  },
  {
    id: 'supply-061',
    quantity: 'exponent from two discharges',
    item: '',
    condition: '',
    value: 'n = (log t2 - log t1)/(log I1 - log I2)',
    unit: '',
    source: "a battery monitor maker's manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-062',
    quantity: 'internal resistance estimate',
    item: '12 V starting battery',
    condition: 'from cold-cranking rating',
    value: '(12.6-7.2)/CCA',
    unit: 'ohm',
    source: 'SAE J537 test point 7.2 V',
    label: 'memory'
  },
  {
    id: 'supply-067',
    quantity: 'least stator AC volts, regulator unplugged',
    item: '16 A external regulator',
    condition: '2500 rpm',
    value: 21.0,
    unit: 'V AC',
    source: "small-engine makers' service manuals",
    label: 'read-secondary'
  },
  {
    id: 'supply-068',
    quantity: 'least stator AC volts, regulator unplugged',
    item: '16 A external regulator',
    condition: '3000 rpm',
    value: 26.5,
    unit: 'V AC',
    source: "small-engine makers' service manuals",
    label: 'read-secondary'
  },
  {
    id: 'supply-069',
    quantity: 'least stator AC volts, regulator unplugged',
    item: '16 A external regulator',
    condition: '3600 rpm',
    value: 31.0,
    unit: 'V AC',
    source: "small-engine makers' service manuals",
    label: 'read-secondary'
  },
  {
    id: 'supply-070',
    quantity: 'least stator AC volts, regulator unplugged',
    item: '20 A, make A',
    condition: '2500 rpm',
    value: 32.0,
    unit: 'V AC',
    source: "small-engine makers' service manuals",
    label: 'read-secondary'
  },
  {
    id: 'supply-072',
    quantity: 'least stator AC volts, regulator unplugged',
    item: '20 A, make A',
    condition: '3600 rpm',
    value: 45.0,
    unit: 'V AC',
    source: "small-engine makers' service manuals",
    label: 'read-secondary'
  },
  {
    id: 'supply-073',
    quantity: 'least stator AC volts, regulator unplugged',
    item: '20 A, make B',
    condition: '3600 rpm',
    value: 26.0,
    unit: 'V AC',
    source: "small-engine makers' service manuals",
    label: 'read-secondary'
  },
  {
    id: 'supply-075',
    quantity: 'least DC volts, 7 A system, lead off',
    item: '7 A external regulator',
    condition: '2500 rpm',
    value: 9,
    unit: 'V DC',
    source: "a small-engine maker's service manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-077',
    quantity: 'least DC volts, 7 A system, lead off',
    item: '7 A external regulator',
    condition: '3600 rpm',
    value: 14,
    unit: 'V DC',
    source: "a small-engine maker's service manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-078',
    quantity: 'charging current into flat battery',
    item: '12 V flywheel alternator, diesel set',
    condition: '1800 rpm',
    value: 8,
    unit: 'A',
    source: "a generator-set maker's service manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-080',
    quantity: 'stator winding resistance',
    item: 'leads 7-8',
    condition: '+/- 25 %',
    value: 0.25,
    unit: 'ohm',
    source: "a generator-set maker's service manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-081',
    quantity: 'stator winding resistance',
    item: 'leads 8-9',
    condition: '+/- 25 %',
    value: 0.95,
    unit: 'ohm',
    source: "a generator-set maker's service manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-083',
    quantity: 'stator resistance',
    item: '25 A, 18 poles',
    condition: '',
    value: '0.1 to 0.2 in text; 0.064 to 0.2 in table',
    unit: 'ohm',
    source: "a turf machine maker's service manual",
    label: 'read-secondary'
  },
  {
    id: 'supply-084',
    quantity: 'shape of permanent-magnet output',
    item: '',
    condition: '',
    value: 'current nearly flat above a knee, near linear in rpm below it',
    unit: '',
    source: 'engineering knowledge',
    label: 'memory'
  }
]
