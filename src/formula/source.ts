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
  'iso-965-1': ['ISO 965-1, tolerances of ISO metric threads', 'read-secondary'],
  'iso-898-1': ['ISO 898-1, stress area and property classes', 'read-secondary'],
  'iso-273': ['ISO 273, clearance holes', 'read-secondary'],
  'iso-2306': ['ISO 2306, drills before tapping', 'read-secondary'],
  'iso-235': ['BS 328, ISO 235 and DIN 338, metric drill sizes', 'read-secondary'],
  'asme-b94.11': ['ASME B94.11M, number and letter drills', 'read-secondary'],
  'forming-tap': ["tap makers' rule for forming taps", 'read-secondary'],
  'thread-height': ['thread height on two bases, 3/4 H and 5/8 H', 'read-secondary'],
  'torque-adapter': ['US Army TM 1-1500-204-23-9, attachments to torque wrenches', 'read'],
  ohm: ["Ohm's and Joule's laws", 'memory'],
  'iacs-copper': ['copper of 100 % IACS conductivity, FAA AC 43.13-1B par. 11-66', 'read-secondary'],
  'iec-60228': ['IEC 60228, conductors of cables, class 5', 'read-secondary'],
  'astm-b258': ['ASTM B258, American wire gauge', 'memory'],
  practice: ['common practice, no published source', 'common practice']
} as const satisfies Record<string, readonly [title: string, label: Source['label']]>

export type SourceId = keyof typeof TITLES

export const SOURCES = Object.fromEntries(Object.entries(TITLES).map(([id, [title, label]]) => [id, { id, title, label }])) as {
  readonly [Id in SourceId]: Source
}
