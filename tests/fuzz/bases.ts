import { readdirSync, readFileSync } from 'node:fs'
import type { Bases } from './fuzz-jobs.ts'

/** Small jobs are made of the blocks of the examples; the examples themselves are the large ones. */
export function basesIn(root: string): Bases {
  const large = ['examples', 'examples/bad'].flatMap(folder =>
    readdirSync(`${root}/${folder}`)
      .filter(name => /^[^.]+\.yaml$/.test(name))
      .map(name => withBench(`${root}/${folder}`, readFileSync(`${root}/${folder}/${name}`, 'utf8')))
  )
  const bare = [
    readFileSync(`${root}/examples/unmeasured/drain-plug.yaml`, 'utf8'),
    ...large.map(text => without(text, ['warm', 'circuit', 'supply', 'proof', 'readings']))
  ]
  return { large, small: [...bare, WIRED, WARMED] }
}

/** The blocks of the bench that a job names, where it has none of its own: nobody opens a file here. */
function withBench(folder: string, text: string): string {
  return text.replace(/^bench: (.*)\n/m, (_, name: string) =>
    readFileSync(`${folder}/${name}`, 'utf8')
      .split(/^(?=\w)/m)
      .filter(block => !text.includes(`\n${block.split(':')[0]}:`) && /^\w/.test(block))
      .join('')
  )
}

/** Whole blocks left out, by their lines. */
function without(text: string, blocks: readonly string[]): string {
  return text.replace(/^([\w-]+):.*\n(?:[ #-].*\n|\n)*/gm, (block, name: string) => (blocks.includes(name) ? '' : block))
}

/** A heater at the end of one wire. Invented. */
const WIRED = `fettle: 1
job: { title: one wire }
parts: { heater: { kind: heater, thread: M12x1.5, rated: { power: 48 W, voltage: 24 V } } }
holes: { left: { takes: heater, found: { diameter: 9.8 mm, depth: 19.0 mm ± 0.2 mm } } }
circuit:
  source: { bus: 24 V, low: 22 V, high: 28 V, resistance: 10 mohm, ground: frame }
  runs:
    - { from: bus, to: left+, wire: { size: 2.5 mm2, length: 10 m, temperature: 20 °C }, through: [{ fuse: F1, rating: 7.5 A, style: blade }] }
    - { from: left-, to: frame, bond: 2 mohm }
  loads: [{ heater: left, from: left+, to: left- }]
supply: { output: { idle: 18 A } }
`
/** A casting that is warmed by a heater that no circuit feeds. Invented. */
const WARMED = `fettle: 1
job: { title: warmed alone, practice: aircraft }
parts: { heater: { kind: heater, thread: M10, rated: { power: 20 W, voltage: 12 V } } }
holes: { left: { takes: heater, found: { diameter: 8.2 mm, depth: 15.0 mm } } }
surroundings: { air: -5 °C ± 2 K, humidity: 80 %, altitude: 200 m, airflow: 2 m/s }
warm: { mass: 0.45 kg, material: A380, area: 0.03 m2, target: 3 K above dew }
mass: { before: { mass: 500 kg, arm: 2 m }, adds: [{ what: heater, mass: 58 g, arm: 1 m }] }
`
