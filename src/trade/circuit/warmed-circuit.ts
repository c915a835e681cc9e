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

/** Fixed point of resistance and temperature, from cold. */
export function warmed(circuit: PlainCircuit, contacts: Settled['contacts']): Settled {
  const held = new HeldCircuit(circuit, contacts)
  const { warming } = held
  let ohms = warming.map(({ part }) => ohmAt(part, part.ambientC))
  let before: readonly Tried[] = []
  for (let round = 0; round < ROUNDS; round++) {
    const drawn = held.at(ohms)
    const partC = warming.map(({ part, at }) => settledC(part, drawn.flowAt(at)))
    const tried = warming.map(({ part }, i) => ({ ohm: ohms[i]!, wanted: ohmAt(part, partC[i]!) }))
    // No quotient: a wire of no length has no resistance at all.
    if (tried.every(({ ohm, wanted }) => Math.abs(wanted - ohm) <= SETTLED_SHARE * ohm))
      return { partC: Object.fromEntries(warming.map(({ part }, i) => [part.id, partC[i]!])), contacts, ...withOpen(drawn, circuit) }
    const last = before
    ohms = tried.map((one, i) => nextOhm(one, last[i]))
    before = tried
  }
  throw noRest(warming)
}

/** A resistance as it was taken, and as the temperature it then has wants it. */
interface Tried {
  readonly ohm: number
  readonly wanted: number
}

/** Up to here what is wanted follows so weakly what is taken that the line through the last two rounds leads on. */
const WEAK = 0.5

/** What follows weakly goes along that line; otherwise a round goes half way where the last one overshot. */
function nextOhm({ ohm, wanted }: Tried, last: Tried | undefined): number {
  const step = wanted - ohm
  if (last === undefined) return wanted
  const slope = (wanted - last.wanted) / (ohm - last.ohm)
  if (Math.abs(slope) < WEAK) return ohm + step / (1 - slope)
  return ohm + ((ohm - last.ohm) * step < 0 ? step / 2 : step)
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
