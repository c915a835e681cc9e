/** Where a figure comes from. A label is never promoted: `read` was seen in the primary text, `read-secondary` as quoted by somebody else. */
export interface Source {
  readonly id: string
  readonly title: string
  readonly label: 'read' | 'read-secondary' | 'memory' | 'common practice'
}

/** Every source that a formula, a table or a limit of this program names. */
const TITLES = {
  geometry: ['geometry', 'common practice'],
  arithmetic: ['arithmetic of definitions', 'common practice'],
  'iso-68-1': ['ISO 68-1, basic profile of the ISO general purpose screw thread', 'read-secondary'],
  'iso-724': ['ISO 724, basic dimensions of ISO metric threads', 'read-secondary'],
  'iso-261': ['ISO 261 and ISO 262, pitch series of ISO metric threads', 'read-secondary'],
  'iso-261-choice': ['ISO 261, first, second and third choice of diameters', 'memory'],
  'iso-965-1': ['ISO 965-1, tolerances of ISO metric threads', 'read-secondary'],
  'iso-965-1-memory': ['ISO 965-1, tolerance position f and grades 3 and 9 of the pitch diameter', 'memory'],
  'iso-898-1': ['ISO 898-1, stress area and property classes', 'read-secondary'],
  'iso-273': ['ISO 273, clearance holes', 'read-secondary'],
  'iso-273-memory': ['ISO 273, clearance holes of the sizes not seen reprinted', 'memory'],
  'iso-2306': ['ISO 2306, drills before tapping', 'read-secondary'],
  'tap-drill-handbook': ['a vocational-training handbook, tap drills of fine metric threads', 'read-secondary'],
  'tap-drill-stocked': ['ISO 2306 practice, D - P to the nearest stocked drill', 'memory'],
  'tap-drill-rule': ['the rule D - P, rounded to the metric drill set', 'common practice'],
  'iso-235': ['BS 328, ISO 235 and DIN 338, metric drill sizes', 'read-secondary'],
  'iso-235-memory': ['ISO 235, metric drill sizes below 1 mm and above 25 mm', 'memory'],
  'drill-extras': ['common metric drill sets, sizes x.25 and x.75', 'common practice'],
  'drill-fractions': ['fraction drills, every 64th of an inch', 'common practice'],
  'asme-b94.11': ['ASME B94.11M, number and letter drills', 'read-secondary'],
  'forming-tap': ["tap makers' rule for forming taps", 'read-secondary'],
  'thread-height': ['thread height on two bases, 3/4 H and 5/8 H', 'read-secondary'],
  'din-76-1': ['DIN 76-1, thread run-out of blind holes, regular', 'read-secondary'],
  'tap-depth': ['a tap maker: thread, chamfer, front centre and one pitch make the depth of a tapped blind hole', 'read-secondary'],
  'hand-tapping': ['teaching pages on hand tapping, which differ', 'read-secondary'],
  'din-76-1-mouth': ['DIN 76-1, mouth of a tapped hole', 'memory'],
  'torque-adapter': ['US Army TM 1-1500-204-23-9, attachments to torque wrenches', 'read'],
  ohm: ["Ohm's and Joule's laws", 'memory'],
  'iacs-copper': ['copper of 100 % IACS conductivity, FAA AC 43.13-1B par. 11-66', 'read-secondary'],
  kirchhoff: ["Kirchhoff's laws, by modified nodal analysis", 'memory'],
  'iec-60228': ['IEC 60228 tables 2 and 3, conductors of cables, class 2 and class 5', 'read-secondary'],
  'iec-60228-unseen': ['IEC 60228 tables 2 and 3, sizes not seen in any copy', 'memory'],
  'iso-6722-1': ['ISO 6722-1, road vehicle cables', 'memory'],
  'ac-43.13-1b-11-9': ['FAA AC 43.13-1B table 11-9, aircraft wire', 'read-secondary'],
  'aircraft-areas-unseen': ['conductor areas of aircraft wire by its strands, not seen in any copy', 'memory'],
  'astm-b258': ['ASTM B258, American wire gauge', 'memory'],
  'ac-43.13-1b-11-6': ['FAA AC 43.13-1B table 11-6, allowable drop, continuous loads', 'read-secondary'],
  'ac-43.13-1b-11-96': ['FAA AC 43.13-1B par. 11-96, support of wire and distance from fuel lines', 'read-secondary'],
  'ac-43.13-1b-11-118': ['FAA AC 43.13-1B par. 11-118, slack between supports and spare length', 'read-secondary'],
  'ac-43.13-1b-11-189': ['FAA AC 43.13-1B par. 11-189, bonding joints and their finish', 'read-secondary'],
  'abyc-e-11-support': ['ABYC E-11, support of conductors every 18 in', 'memory'],
  'tm-1-1500-204-23-4': ['US Army TM 1-1500-204-23-4 par. 3-1, bend radius of wire', 'read-secondary'],
  'cfr-27.1357': ['14 CFR 27.1357, protective devices and their spares', 'read-secondary'],
  'cfr-27.1367': ['14 CFR 27.1367, switches', 'read-secondary'],
  'cfr-43.9': ['14 CFR 43.9, content of a maintenance record', 'read-secondary'],
  'proof-order': ['training cards on aircraft wiring, order of proof', 'read-secondary'],
  'abyc-e-11': ['ABYC E-11, drop of critical circuits, as quoted by a marine wire maker', 'read-secondary'],
  'iso-6789': ['ISO 6789, hand torque tools: the range starts at the lowest marked value', 'read-secondary'],
  'torque-units': ['exact definitions: 1 lbf = 0.45359237 kg × 9.80665 m/s², 1 in = 25.4 mm', 'read-secondary'],
  practice: ['common practice, no published source', 'common practice']
} as const satisfies Record<string, readonly [title: string, label: Source['label']]>

export type SourceId = keyof typeof TITLES

export const SOURCES = Object.fromEntries(Object.entries(TITLES).map(([id, [title, label]]) => [id, { id, title, label }])) as {
  readonly [Id in SourceId]: Source
}
