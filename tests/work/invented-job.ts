/** Invented: one hole, one part; what is null is left out. */
export interface JobText {
  readonly title?: string
  readonly behind?: string | null
  readonly leakTest?: string
  readonly wayBack?: string
  readonly torque?: string | null
  readonly threadLength?: string | null
  readonly depth?: string
  readonly stack?: string
  readonly circuit?: string
  readonly record?: string
  readonly practice?: string
}

export function jobText({
  title = 'an invented job',
  behind = 'coolant',
  leakTest,
  wayBack,
  torque = '{ card: 12 N·m, threads: dry }',
  threadLength = '15.9 mm ± 0.2 mm',
  depth = '24.0 mm ± 0.5 mm',
  stack = '[{ what: ring terminal, thickness: 1.2 mm ± 0.1 mm }]',
  circuit,
  record,
  practice = 'general'
}: JobText): string {
  const lines = [
    'fettle: 1',
    `job: { title: ${JSON.stringify(title)}, practice: ${practice} }`,
    'ask-first:',
    '  approval: owner',
    ...field('  behind-the-metal', behind === null ? null : JSON.stringify(behind)),
    ...field('  leak-test', leakTest),
    ...field('  way-back', wayBack),
    'parts:',
    '  cartridge:',
    '    kind: heater',
    '    rated: { power: 45 W, voltage: 24 V }',
    '    thread: M12x1.75',
    ...field('    thread-length', threadLength),
    '    overall: 16.6 mm ± 0.2 mm',
    ...field('    torque', torque),
    '    mass: 41 g',
    'tools:',
    '  wrench: { range: 5..25 N·m, accuracy: 4 % }',
    '  stop-error: 0.3 mm',
    '  tap-clear: 0.6 mm',
    '  taps: [{ name: taper, chamfer: 8 }, { name: second, chamfer: 4 }, { name: bottoming, chamfer: 1.5 }]',
    'holes:',
    '  elbow:',
    '    takes: cartridge',
    '    casting: { alloy: A380, metal-below: 6.0 mm ± 0.6 mm, wall: 6 mm }',
    `    found: { diameter: 9.0 mm, depth: ${depth} }`,
    '    drill: { size: 10.2 mm }',
    '    keep-clear: 1.0 mm',
    `    under-shoulder: ${stack}`,
    ...field('circuit', circuit),
    ...field('record', record)
  ]
  return `${lines.join('\n')}\n`
}

function field(name: string, value: string | null | undefined): readonly string[] {
  return value === null || value === undefined ? [] : [`${name}: ${value}`]
}
