import { brokenLinks } from '../../../src/job/links.ts'
import type { Job } from '../../../src/job/read-job.ts'
import { readJob } from '../../../src/job/read-job.ts'

/** Two heaters on one return, invented. `more` goes to the end of the file. */
export function jobText(
  more = '',
  { bus = '{ bus: 27.4 V, low: 24.0 V, high: 28.6 V, resistance: 15 mohm, ground: chassis }' } = {}
): string {
  return `fettle: 1
job: { title: two heaters }
parts:
  cartridge: { kind: heater, rated: { power: 48 W ± 5 %, voltage: 24 V }, thread: M12x1.5 }
holes:
  left: &head { takes: cartridge, found: { diameter: 9.6 mm, depth: 22 mm } }
  right: *head
circuit:
  source: ${bus}
  runs:
    - { from: bus, to: panel, wire: { size: 4 mm2, length: 0.9 m, temperature: 30 °C } }
    - { from: panel, to: tee, through: [{ what: fuse F4, resistance: 7 mohm }], wire: { size: 2.5 mm2, length: 4.6 m, temperature: 30 °C } }
    - { from: tee, to: left+, wire: { size: 1.5 mm2, length: 0.4 m, temperature: 40 °C } }
    - { from: tee, to: right+, wire: { size: 1.5 mm2, length: 0.9 m, temperature: 40 °C } }
    - { from: left-, to: block, wire: { size: 1.5 mm2, length: 0.5 m, temperature: 40 °C } }
    - { from: right-, to: block, wire: { size: 1.5 mm2, length: 0.6 m, temperature: 40 °C } }
    - { from: block, to: chassis, bond: 2 mohm ± 1 mohm }
  loads:
    - { heater: left, from: left+, to: left- }
    - { heater: right, from: right+, to: right- }
${more}`
}

/** A bench whose meters are given, so that nothing of them is assumed. */
export const BENCH = `proof:
  leads: 0.2 ohm ± 0.1 ohm
  test-current: 10 A
  meter: { volts: { percent: 0.5, digits: 2 }, amps: { percent: 2, digits: 5 }, ohms: { percent: 0.9, digits: 1 } }
`

export function jobOf(text: string): { readonly job: Job; readonly circuit: NonNullable<Job['circuit']> } {
  const read = readJob('job.yaml', text)
  const errors = [...read.errors, ...(read.errors.length > 0 ? [] : brokenLinks(read))]
  if (errors.length > 0) throw new Error(errors.map(({ found }) => found).join('; '))
  if (read.job.circuit === null) throw new Error('no circuit')
  return { job: read.job, circuit: read.job.circuit }
}
