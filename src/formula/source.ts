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
  'asme-b1.1': ['ASME B1.1, unified inch screw threads', 'read-secondary'],
  'unified-stress-area': ["fastener suppliers' tables, tensile stress area of unified threads", 'read-secondary'],
  'unified-tap-drill': ['open-source part library, unified tap drills of about 75 % thread on 3/4 H', 'read-secondary'],
  'unified-tap-drill-memory': ['shop chart of unified tap drills', 'memory'],
  'asme-b1.20.1': ['ASME B1.20.1, NPT tapered pipe threads', 'memory'],
  'iso-7-1': ['ISO 7-1, tapered pipe threads', 'memory'],
  'wire-insert': ['ASME B18.29.1 and insert makers, tapped hole for a wire thread insert', 'memory'],
  'din-76-1': ['DIN 76-1, thread run-out of blind holes, regular', 'read-secondary'],
  'din-76-1-memory': ['DIN 76-1, short and long run-out e2 and e3 as a share of e1; mouth of a tapped hole', 'memory'],
  'h28-2b': ['FED-STD-H28/2B and ASME B1.1 appendix B, shear areas of threads', 'read-secondary'],
  alexander: ['Alexander and VDI 2230, factors for dilation and strength ratio', 'memory'],
  'shear-of-tensile': ['shear strength taken as 0.6 of tensile strength', 'memory'],
  'iso-3506-1': ['ISO 3506-1, stainless fasteners', 'memory'],
  'strength-of-materials': ['strength of materials: ring in tension and torsion, distortion energy', 'memory'],
  'iso-16047': ['ISO 16047, torque and preload (Kellermann and Klein)', 'memory'],
  shigley: ["Budynas and Nisbett, Shigley's Mechanical Engineering Design, 9th ed., T = K·F·d", 'read-secondary'],
  'shigley-8-15': ["Shigley's Mechanical Engineering Design, 9th ed., table 8-15, nut factors", 'read'],
  'shigley-collar': ["Shigley's Mechanical Engineering Design, 9th ed., mean bearing diameter 1.25 d", 'memory'],
  'nut-factor-ranges': ["fastener vendor's engineering note, ranges of nut factor", 'read-secondary'],
  'nut-factor-means': ['handbook chapter abstract, mean nut factors of many lubricants', 'read-secondary'],
  'scatter-handbook': ["Machinery's Handbook, preload scatter, as quoted in course notes", 'read-secondary'],
  'scatter-nasa': ['NASA preloaded-bolt criteria (NSTS 08307, TM-106943), as quoted in course notes', 'read-secondary'],
  'scatter-vdi-1986': ['VDI 2230 (1986), tightening factor, as reproduced by a fastener supplier', 'read-secondary'],
  'scatter-vdi': ['VDI 2230, tightening factor, as quoted by a fastener supplier', 'read-secondary'],
  'nadca-a-3-2-12': ['NADCA table A-3-2-12, aluminium die castings, typical, separately cast bars', 'read-secondary'],
  'foundry-356-319': ['foundry data sheet, 356.0 and 319.0 sand castings, typical', 'read-secondary'],
  'wiki-356': ['engineering wiki data page, 356.0-T6 permanent mould, the lowest of three figures', 'read-secondary'],
  'astm-b26': ['ASTM B26 least strength of A356.0-T6 sand castings, on a foundry page', 'read-secondary'],
  'a356-table': ['reference-site table of casting alloys, A356.0-T6 permanent mould', 'read-secondary'],
  'a356-shear': ['A356.0-T6 shear strength: 0.7 of tensile (sand), 193 MPa (permanent mould)', 'memory'],
  'zinc-die-cast': ["two die casters' property tables, ZAMAK alloys", 'read-secondary'],
  'magnesium-die-cast': ["die caster's property table, AZ91D", 'read-secondary'],
  'astm-a48': ['ASTM A48, least tensile strength of grey iron, on a foundry page', 'read-secondary'],
  'iron-20-shear': ['materials database, shear strength of grey iron class 20', 'read-secondary'],
  'iron-shear': ["Shigley's table of grey iron, typical shear strength", 'memory'],
  'tap-maker-torque': ["a tap maker's catalogue, cutting torque of taps", 'read-secondary'],
  'ac-43.13-7-1': ['FAA AC 43.13-1B table 7-1, torque of dry cadmium-plated nuts', 'read-secondary'],
  'ring-terminals-automotive': ['Japanese automotive round plate terminals, as reproduced in a marine foundation report', 'read-secondary'],
  'din-46234': ['DIN 46234, ring terminals', 'memory'],
  'terminal-screws': ["drive maker's manual, terminal screws with ring terminals: its own product, context only", 'read'],
  'lockwire-ac-43.13': ['FAA AC 43.13-1B, lockwire, as quoted', 'read-secondary'],
  'lockwire-guide': ['second lockwire guide, quoted in an encyclopedia passage', 'read-secondary'],
  'lockwire-light-aircraft': ['light-aircraft maintenance manual, lockwire page', 'read'],
  'lockwire-tm': ['US Army TM 1-1500-204-23-6, lockwire', 'read'],
  'lockwire-trade': ['trade page, lockwire', 'read-secondary'],
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
