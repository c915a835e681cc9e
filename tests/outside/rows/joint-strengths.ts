// Property classes: least tensile strength, least yield, proof stress.
export const CLASSES = [
  {
    name: '4.6',
    tensileMpa: 400,
    yieldMpa: 240,
    proofMpa: 225,
    source: 'ISO 898-1 mechanical properties as reproduced by fastener suppliers',
    label: 'read-secondary'
  },
  {
    name: '4.8',
    tensileMpa: 420,
    yieldMpa: 340,
    proofMpa: 310,
    source: 'ISO 898-1 mechanical properties as reproduced by fastener suppliers',
    label: 'read-secondary'
  },
  {
    name: '5.6',
    tensileMpa: 500,
    yieldMpa: 300,
    proofMpa: 280,
    source: 'ISO 898-1 mechanical properties as reproduced by fastener suppliers',
    label: 'read-secondary'
  },
  {
    name: '5.8',
    tensileMpa: 520,
    yieldMpa: 420,
    proofMpa: 380,
    source: 'ISO 898-1 mechanical properties as reproduced by fastener suppliers',
    label: 'read-secondary'
  },
  {
    name: '6.8',
    tensileMpa: 600,
    yieldMpa: 480,
    proofMpa: 440,
    source: 'ISO 898-1 mechanical properties as reproduced by fastener suppliers',
    label: 'read-secondary'
  },
  {
    name: '8.8 d<=16',
    tensileMpa: 800,
    yieldMpa: 640,
    proofMpa: 580,
    source: 'ISO 898-1 mechanical properties as reproduced by fastener suppliers',
    label: 'read-secondary'
  },
  {
    name: '8.8 d>16',
    tensileMpa: 830,
    yieldMpa: 660,
    proofMpa: 600,
    source: 'ISO 898-1 mechanical properties as reproduced by fastener suppliers',
    label: 'read-secondary'
  },
  {
    name: '9.8',
    tensileMpa: 900,
    yieldMpa: 720,
    proofMpa: 650,
    source: 'ISO 898-1 mechanical properties as reproduced by fastener suppliers',
    label: 'read-secondary'
  },
  {
    name: '10.9',
    tensileMpa: 1040,
    yieldMpa: 940,
    proofMpa: 830,
    source: 'ISO 898-1 mechanical properties as reproduced by fastener suppliers',
    label: 'read-secondary'
  },
  {
    name: '12.9',
    tensileMpa: 1220,
    yieldMpa: 1100,
    proofMpa: 970,
    source: 'ISO 898-1 mechanical properties as reproduced by fastener suppliers',
    label: 'read-secondary'
  },
  { name: 'A2-70 / A4-70', tensileMpa: 700, yieldMpa: 450, proofMpa: null, source: 'ISO 3506-1', label: 'memory' },
  { name: 'A2-80 / A4-80', tensileMpa: 800, yieldMpa: 600, proofMpa: null, source: 'ISO 3506-1', label: 'memory' }
] as const

// Casting alloys: typical values of separately cast bars, least values for iron.
export const ALLOYS = [
  {
    alloy: '380.0 die cast',
    tensileMpa: 317,
    yieldMpa: 160,
    shearMpa: 190,
    source: 'NADCA table A-3-2-12, typical, separately die-cast specimens (copy on a document-sharing site)',
    label: 'read-secondary',
    note: ''
  },
  {
    alloy: 'A380.0 die cast',
    tensileMpa: 324,
    yieldMpa: 160,
    shearMpa: 190,
    source: 'NADCA table A-3-2-12, typical, separately die-cast specimens (copy on a document-sharing site)',
    label: 'read-secondary',
    note: 'another die caster prints 325/159/195; an NADCA 1994 sheet 324/159/186 (memory)'
  },
  {
    alloy: '383.0 die cast',
    tensileMpa: 310,
    yieldMpa: 150,
    shearMpa: null,
    source: 'NADCA table A-3-2-12, typical, separately die-cast specimens (copy on a document-sharing site)',
    label: 'read-secondary',
    note: ''
  },
  {
    alloy: '384.0 die cast',
    tensileMpa: 330,
    yieldMpa: 165,
    shearMpa: 200,
    source: 'NADCA table A-3-2-12, typical, separately die-cast specimens (copy on a document-sharing site)',
    label: 'read-secondary',
    note: ''
  },
  {
    alloy: '360.0 die cast',
    tensileMpa: 303,
    yieldMpa: 170,
    shearMpa: 190,
    source: 'NADCA table A-3-2-12, typical, separately die-cast specimens (copy on a document-sharing site)',
    label: 'read-secondary',
    note: ''
  },
  {
    alloy: 'A360.0 die cast',
    tensileMpa: 317,
    yieldMpa: 170,
    shearMpa: 180,
    source: 'NADCA table A-3-2-12, typical, separately die-cast specimens (copy on a document-sharing site)',
    label: 'read-secondary',
    note: ''
  },
  {
    alloy: '413.0 die cast',
    tensileMpa: 300,
    yieldMpa: 140,
    shearMpa: 170,
    source: 'NADCA table A-3-2-12, typical, separately die-cast specimens (copy on a document-sharing site)',
    label: 'read-secondary',
    note: ''
  },
  {
    alloy: '518.0 die cast',
    tensileMpa: 310,
    yieldMpa: 193,
    shearMpa: 200,
    source: 'NADCA table A-3-2-12, typical, separately die-cast specimens (copy on a document-sharing site)',
    label: 'read-secondary',
    note: ''
  },
  {
    alloy: '356.0-T6 sand cast',
    tensileMpa: 228,
    yieldMpa: 165,
    shearMpa: 179,
    source: 'foundry data sheet (33 / 24 / 26 ksi)',
    label: 'read-secondary',
    note: 'a materials database gives 240/170/190 without process'
  },
  {
    alloy: '356.0-T6 permanent mould',
    tensileMpa: 240,
    yieldMpa: null,
    shearMpa: 205,
    source: 'engineering wiki data page',
    label: 'read-secondary',
    note: 'the same page prints yield 225 MPa, which looks wrong (typical 185, memory); a civil-engineering text prints 276/186/221: the row is the low one'
  },
  {
    alloy: 'A356.0-T6 sand cast',
    tensileMpa: 276,
    yieldMpa: 207,
    shearMpa: null,
    source: 'reference-site casting alloy table (40 / 30 ksi)',
    label: 'read-secondary',
    note: 'shear about 0.7 x tensile (memory); typical; ASTM B26 least 234 / 165 on a foundry page: prefer it for a verdict'
  },
  {
    alloy: 'A356.0-T6 permanent mould',
    tensileMpa: 262,
    yieldMpa: 186,
    shearMpa: null,
    source: 'reference-site casting alloy table (38 / 27 ksi)',
    label: 'read-secondary',
    note: 'shear 193 MPa from memory'
  },
  {
    alloy: '319.0-F sand cast',
    tensileMpa: 186,
    yieldMpa: 124,
    shearMpa: 152,
    source: 'foundry data sheet (27 / 18 / 22 ksi)',
    label: 'read-secondary',
    note: ''
  },
  {
    alloy: '319.0-T6 sand cast',
    tensileMpa: 248,
    yieldMpa: 165,
    shearMpa: 200,
    source: 'foundry data sheet (36 / 24 / 29 ksi)',
    label: 'read-secondary',
    note: ''
  },
  {
    alloy: 'ZAMAK 3 die cast',
    tensileMpa: 283,
    yieldMpa: 221,
    shearMpa: 214,
    source: "two die casters' property tables",
    label: 'read-secondary',
    note: 'aged tensile 241'
  },
  {
    alloy: 'ZAMAK 5 die cast',
    tensileMpa: 328,
    yieldMpa: 269,
    shearMpa: 262,
    source: "two die casters' property tables",
    label: 'read-secondary',
    note: 'other table 331; aged tensile 269; one zinc sheet prints yield 228'
  },
  {
    alloy: 'ZAMAK 2 die cast',
    tensileMpa: 359,
    yieldMpa: 283,
    shearMpa: 317,
    source: "two die casters' property tables",
    label: 'read-secondary',
    note: 'aged tensile 331'
  },
  {
    alloy: 'AZ91D die cast',
    tensileMpa: 230,
    yieldMpa: 160,
    shearMpa: 138,
    source: "die caster's property table",
    label: 'read-secondary',
    note: 'NADCA trade page: 34 ksi tensile, 23 ksi yield, 20 ksi shear for magnesium'
  },
  {
    alloy: 'grey iron class 20',
    tensileMpa: 138,
    yieldMpa: null,
    shearMpa: 179,
    source: 'ASTM A48 minimum tensile (foundry page); shear from a materials database',
    label: 'read-secondary',
    note: ''
  },
  {
    alloy: 'grey iron class 25',
    tensileMpa: 172,
    yieldMpa: null,
    shearMpa: null,
    source: 'ASTM A48 minimum tensile (foundry page)',
    label: 'read-secondary',
    note: 'typical shear 220 MPa (32 ksi), Shigley table, memory'
  },
  {
    alloy: 'grey iron class 30',
    tensileMpa: 207,
    yieldMpa: null,
    shearMpa: null,
    source: 'ASTM A48 minimum tensile (foundry page)',
    label: 'read-secondary',
    note: 'typical shear 276 MPa (40 ksi), memory'
  },
  {
    alloy: 'grey iron class 35',
    tensileMpa: 241,
    yieldMpa: null,
    shearMpa: null,
    source: 'ASTM A48 minimum tensile (foundry page)',
    label: 'read-secondary',
    note: 'typical shear 334 MPa (48.5 ksi), memory'
  },
  {
    alloy: 'grey iron class 40',
    tensileMpa: 276,
    yieldMpa: null,
    shearMpa: null,
    source: 'ASTM A48 minimum tensile (foundry page)',
    label: 'read-secondary',
    note: 'typical shear 393 MPa (57 ksi), memory'
  }
] as const
