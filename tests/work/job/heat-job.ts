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
  const { findings, results, errors, cautions, inputs } = judgeJob('x.yaml', change(HEAD) + text)
  return {
    errors,
    inputs,
    cautions: cautions.join('\n'),
    finding: (rule: string) => findings.find(one => one.rule === rule),
    verdicts: Object.fromEntries(
      findings.filter(({ rule }) => /^(warm|dew|mass)\//.test(rule)).map(({ rule, verdict }) => [rule, verdict])
    ),
    result: (id: string) => results.find(one => one.id === id)
  }
}

interface Settling {
  readonly watts: number
  readonly filmWPerK: number
  readonly airC: number
  readonly emissivity: number
}

/** Where the heat put in meets what film and radiation (CODATA constant) take from 0.03 m2, found by halving. */
export function settledByHand({ watts, filmWPerK, airC, emissivity }: Settling): number {
  const lostW = (atC: number) => filmWPerK * (atC - airC) + emissivity * 5.670374e-8 * 0.03 * ((atC + 273.15) ** 4 - (airC + 273.15) ** 4)
  let [low, high] = [airC, airC + watts / filmWPerK]
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2
    if (lostW(middle) < watts) low = middle
    else high = middle
  }
  return low
}
