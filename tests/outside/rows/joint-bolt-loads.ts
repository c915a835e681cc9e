// Least breaking load and proof load of coarse-thread bolts.
export const BOLT_LOADS = [
  {
    thread: 'M3',
    partClass: '4.8',
    breakingN: 2110,
    proofN: 1560,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M3',
    partClass: '6.8',
    breakingN: 3020,
    proofN: 2210,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M3',
    partClass: '10.9',
    breakingN: 5230,
    proofN: 4180,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M3',
    partClass: '12.9',
    breakingN: 6140,
    proofN: 4880,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M4',
    partClass: '6.8',
    breakingN: 5270,
    proofN: 3860,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M4',
    partClass: '8.8',
    breakingN: 7020,
    proofN: 5100,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M4',
    partClass: '12.9',
    breakingN: 10700,
    proofN: 8520,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M5',
    partClass: '4.8',
    breakingN: 5960,
    proofN: 4400,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M5',
    partClass: '8.8',
    breakingN: 11350,
    proofN: 8230,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M5',
    partClass: '10.9',
    breakingN: 14800,
    proofN: 11800,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M6',
    partClass: '4.8',
    breakingN: 8440,
    proofN: 6230,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M6',
    partClass: '6.8',
    breakingN: 12100,
    proofN: 8840,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M6',
    partClass: '10.9',
    breakingN: 20900,
    proofN: 16700,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M6',
    partClass: '12.9',
    breakingN: 24500,
    proofN: 19500,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M8',
    partClass: '6.8',
    breakingN: 22000,
    proofN: 16100,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M8',
    partClass: '8.8',
    breakingN: 29200,
    proofN: 21200,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M8',
    partClass: '12.9',
    breakingN: 44600,
    proofN: 35500,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M10',
    partClass: '4.8',
    breakingN: 24400,
    proofN: 18000,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M10',
    partClass: '8.8',
    breakingN: 46400,
    proofN: 33700,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M10',
    partClass: '10.9',
    breakingN: 60300,
    proofN: 48100,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M12',
    partClass: '4.8',
    breakingN: 35400,
    proofN: 26100,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M12',
    partClass: '6.8',
    breakingN: 50600,
    proofN: 37100,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M12',
    partClass: '10.9',
    breakingN: 87700,
    proofN: 70000,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M12',
    partClass: '12.9',
    breakingN: 103000,
    proofN: 81800,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M14',
    partClass: '6.8',
    breakingN: 69000,
    proofN: 50600,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M14',
    partClass: '8.8',
    breakingN: 92000,
    proofN: 66700,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M14',
    partClass: '12.9',
    breakingN: 140000,
    proofN: 112000,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M16',
    partClass: '4.8',
    breakingN: 65900,
    proofN: null,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M16',
    partClass: '8.8',
    breakingN: 125000,
    proofN: null,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M16',
    partClass: '10.9',
    breakingN: 163000,
    proofN: null,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M20',
    partClass: '4.8',
    breakingN: 103000,
    proofN: null,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M20',
    partClass: '6.8',
    breakingN: 147000,
    proofN: null,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M20',
    partClass: '10.9',
    breakingN: 255000,
    proofN: null,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M20',
    partClass: '12.9',
    breakingN: 299000,
    proofN: null,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M24',
    partClass: '6.8',
    breakingN: 212000,
    proofN: null,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M24',
    partClass: '8.8',
    breakingN: 293000,
    proofN: null,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  },
  {
    thread: 'M24',
    partClass: '12.9',
    breakingN: 431000,
    proofN: null,
    source: "ISO 898-1 minimum ultimate tensile and proof loads, suppliers' tables",
    label: 'read-secondary'
  }
] as const
