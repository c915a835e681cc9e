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
  'wmo-8': ['WMO-No. 8, Guide to Instruments and Methods of Observation, Magnus form of the saturation vapour pressure', 'read-secondary'],
  'wmo-8-psychrometer': ['WMO-No. 8, vapour pressure from the ventilated wet bulb', 'memory'],
  'ashrae-moist-air': ['ASHRAE Handbook Fundamentals, humidity ratio of moist air', 'memory'],
  'iso-2533': ['ISO 2533, standard atmosphere', 'memory'],
  'lemmon-jacobsen': ['Lemmon and Jacobsen 2004, viscosity and thermal conductivity of air, dilute-gas terms', 'memory'],
  'air-heat': ['specific heat of dry air near 1 atm, as textbooks tabulate it', 'memory'],
  'churchill-bernstein': ['Churchill and Bernstein, cylinder across a flow, as in heat transfer textbooks', 'memory'],
  hilpert: ['Hilpert, cylinder across a flow, as in heat transfer textbooks', 'memory'],
  'flat-plate': ['mean Nusselt number of a flat plate along a flow, as in heat transfer textbooks', 'memory'],
  'churchill-chu': ['Churchill and Chu, natural convection, as in a heat transfer textbook companion', 'read-secondary'],
  'mixed-convection': ['mixed convection, assisting or transverse, as in heat transfer textbooks', 'memory'],
  'heat-balance': ['heat balance of bodies of one temperature each', 'memory'],
  'grey-body': ['grey body to large surroundings, Stefan-Boltzmann law', 'memory'],
  'least-squares': ['least squares by Levenberg and Marquardt; twice the standard error, as in JCGM 100', 'memory'],
  'evaporation-balance': ['energy balance of fuel evaporating in air, no heat gained', 'memory'],
  'alternative-fuel-table': ['US alternative-fuel property table, latent heat of gasoline', 'read-secondary'],
  'steady-flow': ['steady-flow energy equation', 'memory'],
  'incropera-contact': ['Incropera, Fundamentals of Heat and Mass Transfer, tables 3.1 and 3.2', 'memory'],
  'lienhard-contact': ['Lienhard and Lienhard, A Heat Transfer Textbook, table 2.1', 'memory'],
  'incropera-a1': ['Incropera, table A.1, through example 3.9 of a textbook companion', 'read-secondary'],
  'camera-emissivity': ["emissivity table in a thermal-camera maker's manual", 'read-secondary'],
  'thermometer-emissivity': ["emissivity table in an infrared-thermometer maker's manual", 'read-secondary'],
  nadca: ['NADCA die-casting alloy data, typical as-cast, as reproduced by suppliers', 'read-secondary'],
  'magnesium-presentation': ['industry presentation on magnesium castings', 'read-secondary'],
  'materials-site': ['materials reference site', 'read-secondary'],
  'caster-page': ["caster's data page", 'read-secondary'],
  'callister-b': ['Callister, Fundamentals of Materials Science and Engineering, appendix B', 'memory'],
  'aluminium-heat': ['specific heat of aluminium, alloy not named', 'memory'],
  'weight-and-balance': ['mass and moment, FAA airframe and weight-and-balance handbooks', 'read-secondary'],
  'adverse-loading': ['FAA AC 43.13-1B chapter 10, adverse-loaded centre of gravity checks', 'memory'],
  'ac-43.13-1b-10-2': ['FAA AC 43.13-1B par. 10-2c, negligible weight change', 'read-secondary'],
  'ac-43.13-1b-11-6': ['FAA AC 43.13-1B table 11-6, allowable drop, continuous loads', 'read-secondary'],
  'abyc-e-11': ['ABYC E-11, drop of critical circuits, as quoted by a marine wire maker', 'read-secondary'],
  'iso-6789': ['ISO 6789, hand torque tools: the range starts at the lowest marked value', 'read-secondary'],
  'torque-units': ['exact definitions: 1 lbf = 0.45359237 kg × 9.80665 m/s², 1 in = 25.4 mm', 'read-secondary'],
  practice: ['common practice, no published source', 'common practice']
} as const satisfies Record<string, readonly [title: string, label: Source['label']]>

export type SourceId = keyof typeof TITLES

export const SOURCES = Object.fromEntries(Object.entries(TITLES).map(([id, [title, label]]) => [id, { id, title, label }])) as {
  readonly [Id in SourceId]: Source
}
