import { judgeJob } from '../../../src/work/job/judge-job.ts'

/** Invented: a heater in a block, without a circuit. */
const HEAD = `
fettle: 1
job: { title: invented }
parts:
  cartridge:
    kind: heater
    rated: { power: 18 W, voltage: 12 V }
    thread: M12x1.5
    mass: 41 g
holes:
  left: { takes: cartridge, found: { diameter: 9.8 mm, depth: 19 mm } }
`

/** The same in a circuit whose bus goes from 11 to 15 V, without loss on the way. */
export const CIRCUIT = `
circuit:
  source: { bus: 12 V, low: 11 V, high: 15 V, resistance: 0 ohm, ground: frame }
  runs: [{ from: bus, to: hot, bond: 0 ohm }, { from: cold, to: frame, bond: 0 ohm }]
  loads: [{ heater: left, from: hot, to: cold }]
`

/** The job judged: its findings by rule, its results by id, what it could not read. */
export function judged(text: string, change: (head: string) => string = head => head) {
  const { findings, results, errors, cautions } = judgeJob('x.yaml', change(HEAD) + text)
  return {
    errors,
    cautions: cautions.join('\n'),
    finding: (rule: string) => findings.find(one => one.rule === rule),
    verdicts: Object.fromEntries(
      findings.filter(({ rule }) => /^(warm|dew|mass)\//.test(rule)).map(({ rule, verdict }) => [rule, verdict])
    ),
    result: (id: string) => results.find(one => one.id === id)
  }
}
