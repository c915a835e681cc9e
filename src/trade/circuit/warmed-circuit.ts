import { NoAnswer } from '../../formula/no-answer.ts'
import { quoted } from '../../quantity/quoted.ts'
import type { FactoredNetwork } from './factored-network.ts'
import { HeldCircuit, type Warming } from './held-circuit.ts'
import type { Flow, Solution } from './network.ts'
import type { PlainCircuit, Settled } from './part.ts'
import { ohmAt, settledC } from './warmth.ts'

/** A round that moves no resistance by more than this share of it ends the search. */
export const SETTLED_SHARE = 1e-9
const ROUNDS = 300

/** Fixed point of resistance and temperature, from cold; each round goes half way where the last one overshot. */
export function warmed(circuit: PlainCircuit, contacts: Settled['contacts']): Settled {
  const held = new HeldCircuit(circuit, contacts)
  const { warming } = held
  let ohms = warming.map(({ part }) => ohmAt(part, part.ambientC))
  let steps: readonly number[] = []
  for (let round = 0; round < ROUNDS; round++) {
    const drawn = held.at(ohms)
    const partC = warming.map(({ part, at }) => settledC(part, drawn.flowAt(at)))
    const wanted = warming.map(({ part }, i) => ohmAt(part, partC[i]!))
    if (wanted.every((ohm, i) => Math.abs(ohm / ohms[i]! - 1) <= SETTLED_SHARE))
      return { partC: Object.fromEntries(warming.map(({ part }, i) => [part.id, partC[i]!])), contacts, ...withOpen(drawn, circuit) }
    const next = wanted.map((ohm, i) => stepped(ohms[i]!, ohm, steps[i]))
    steps = next.map((ohm, i) => ohm - ohms[i]!)
    ohms = next
  }
  throw noRest(warming)
}

function stepped(from: number, wanted: number, lastStep: number | undefined): number {
  const step = wanted - from
  return from + (lastStep !== undefined && lastStep * step < 0 ? step / 2 : step)
}

function noRest(warming: readonly Warming[]): NoAnswer {
  return new NoAnswer(
    `the temperatures of ${warming.map(({ part }) => quoted(part.id)).join(', ')} find no rest`,
    'look at the temperature coefficients: a load whose resistance falls as it warms runs away at a fixed voltage'
  )
}

/** An open contact carries nothing; what stands across it is worth knowing all the same. */
function withOpen(drawn: FactoredNetwork, { parts }: PlainCircuit): Solution {
  const { nodeV, flows } = drawn.solution()
  const open = parts
    .filter(({ id }) => flows[id] === undefined)
    .map(({ id, from, to }): readonly [string, Flow] => [id, { currentA: 0, dropV: (nodeV[from] ?? 0) - (nodeV[to] ?? 0), powerW: 0 }])
  return open.length === 0 ? { nodeV, flows } : { nodeV, flows: { ...flows, ...Object.fromEntries(open) } }
}
