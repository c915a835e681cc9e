import { fact } from '../../formula/formula.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { SOURCES } from '../../formula/source.ts'
import { isRecording, recordStep, silently } from '../../formula/working.ts'
import { quoted } from '../../quantity/quoted.ts'
import { FactoredNetwork } from './factored-network.ts'
import { refuseFloating } from './floating-parts.ts'
import { refuseIdealLoops } from './ideal-loops.ts'
import type { Flow, PlainElement, PlainNetwork, Solution } from './network.ts'
import { requireSound } from './network-limits.ts'
import type { PartOf, PlainCircuit, PlainPart, Settled } from './part.ts'
import { powerPoints } from './power-points.ts'
import { ohmAt, settledC } from './warmth.ts'

type Contacts = Settled['contacts']
/** Resistances of the parts that follow their own temperature, as they stand in this round. */
type Ohms = ReadonlyMap<string, number>

/** A round that moves no resistance by more than this share of it ends the search. */
export const SETTLED_SHARE = 1e-9
const ROUNDS = 300
const GREATEST_W = 1e6

/** Voltages, currents and temperatures of a circuit as it settles: relays, then temperatures, then loads of constant power. */
export function settle(circuit: PlainCircuit): Settled {
  const settled = silently(() => settledBy(circuit))
  tell(circuit, settled)
  return settled
}

/** The working of the end alone: the rounds before it are no answer. */
function tell({ ground, parts }: PlainCircuit, { nodeV, flows }: Settled): void {
  if (!isRecording()) return
  for (const part of parts) if (part.kind === 'warming' || part.kind === 'wire') ohmAt(part, settledC(part, flows[part.id]!))
  for (const [node, value] of Object.entries(nodeV)) {
    if (node === ground) continue
    const joined = () => parts.filter(({ from, to }) => from === node || to === node).map(({ id, from, to }) => `${id}, ${from} to ${to}`)
    recordStep(fact('nodeV', { says: `voltage at ${node} against ${ground}`, symbol: 'U', source: SOURCES.kirchhoff }), value, () =>
      joined().join('; ')
    )
  }
}

function settledBy(circuit: PlainCircuit): Settled {
  requireSoundParts(circuit)
  let contacts: Contacts = Object.fromEntries(relaysOf(circuit).map(({ id, atRest }) => [id, atRest]))
  const seen = new Set<string>()
  for (;;) {
    const settled = warmed(circuit, contacts)
    const next = worked(circuit, settled, contacts)
    if (JSON.stringify(next) === JSON.stringify(contacts)) return settled
    if (seen.has(JSON.stringify(next))) throw chatters(circuit, contacts, next)
    seen.add(JSON.stringify(contacts))
    contacts = next
  }
}

function relaysOf({ parts }: PlainCircuit): readonly PartOf<'relay'>[] {
  return parts.filter(part => part.kind === 'relay')
}

/** A coil holds at less current than it pulls in at. */
function worked(circuit: PlainCircuit, { flows }: Settled, before: Contacts): Contacts {
  return Object.fromEntries(
    relaysOf(circuit).map(({ id, coil, atRest, pullInA, dropOutA }) => {
      const coilA = Math.abs(flows[coil]!.currentA)
      const pulled = before[id] === atRest ? coilA >= pullInA : coilA >= dropOutA
      return [id, pulled ? other(atRest) : atRest]
    })
  )
}

function other(state: 'open' | 'closed'): 'open' | 'closed' {
  return state === 'open' ? 'closed' : 'open'
}

function chatters(circuit: PlainCircuit, before: Contacts, next: Contacts): NoAnswer {
  const names = relaysOf(circuit).filter(({ id }) => before[id] !== next[id])
  return new NoAnswer(
    `${names.map(({ id }) => `the relay ${quoted(id)}`).join(' and ')} cannot come to rest: pulling in takes away what holds it`,
    'feed its coil from before the load, or with thicker wire'
  )
}

/** Fixed point of resistance and temperature, from cold; each round goes half way where the last one overshot. */
function warmed(circuit: PlainCircuit, contacts: Contacts): Settled {
  const warming = circuit.parts.filter((part): part is PartOf<'warming' | 'wire'> => part.kind === 'warming' || part.kind === 'wire')
  let ohms = warming.map(part => ohmAt(part, part.ambientC))
  let steps: readonly number[] = []
  for (let round = 0; round < ROUNDS; round++) {
    const resistances = new Map(warming.map(({ id }, i) => [id, ohms[i]!]))
    const drawn = solved(circuit, contacts, resistances, round === 0 ? 'unseen' : 'looked at')
    const partC = warming.map(part => settledC(part, drawn.flowOf(part.id)))
    const wanted = warming.map((part, i) => ohmAt(part, partC[i]!))
    if (wanted.every((ohm, i) => Math.abs(ohm / ohms[i]! - 1) <= SETTLED_SHARE))
      return {
        partC: Object.fromEntries(warming.map(({ id }, i) => [id, partC[i]!])),
        contacts,
        ...withOpen(drawn.solutionOf(drawn.unknowns), circuit)
      }
    const next = wanted.map((ohm, i) => stepped(ohms[i]!, ohm, steps[i]))
    steps = next.map((ohm, i) => ohm - ohms[i]!)
    ohms = next
  }
  throw new NoAnswer(
    `the temperatures of ${warming.map(({ id }) => quoted(id)).join(', ')} find no rest`,
    'look at the temperature coefficients: a load whose resistance falls as it warms runs away at a fixed voltage'
  )
}

function stepped(from: number, wanted: number, lastStep: number | undefined): number {
  const step = wanted - from
  return from + (lastStep !== undefined && lastStep * step < 0 ? step / 2 : step)
}

/** The circuit with contacts and resistances held: linear but for its loads of constant power. What hangs on what stays from round to round. */
function solved(circuit: PlainCircuit, contacts: Contacts, ohms: Ohms, shape: 'unseen' | 'looked at'): FactoredNetwork {
  const network = networkOf(circuit, contacts, ohms)
  requireSound(network)
  if (shape === 'unseen') {
    refuseFloating(network)
    refuseIdealLoops(network)
  }
  const base = new FactoredNetwork(network)
  const loads = circuit.parts.filter(part => part.kind === 'power')
  if (loads.length === 0) return base
  const amps = new Map(powerPoints(base, loads).map((a, i) => [loads[i]!.id, a]))
  return new FactoredNetwork({ ...network, elements: network.elements.map(one => drawing(one, amps)) })
}

function drawing(element: PlainElement, amps: ReadonlyMap<string, number>): PlainElement {
  const drawA = amps.get(element.id)
  return drawA === undefined || element.kind !== 'draw' ? element : { ...element, drawA }
}

function networkOf({ ground, parts }: PlainCircuit, contacts: Contacts, ohms: Ohms): PlainNetwork {
  return { ground, elements: parts.flatMap(part => elementOf(part, contacts, ohms) ?? []) }
}

/** Nothing where a contact is open. */
function elementOf(part: PlainPart, contacts: Contacts, ohms: Ohms): PlainElement | undefined {
  const { id, from, to } = part
  switch (part.kind) {
    case 'resistor':
    case 'source':
    case 'draw':
      return part
    case 'power':
      return { kind: 'draw', id, from, to, drawA: 0 }
    case 'warming':
    case 'wire':
      return { kind: 'resistor', id, from, to, resistanceOhm: ohms.get(id)! }
    case 'contact':
      return part.state === 'open' ? undefined : { kind: 'resistor', id, from, to, resistanceOhm: part.contactOhm }
    case 'relay':
      return contacts[id] === 'open' ? undefined : { kind: 'resistor', id, from, to, resistanceOhm: part.contactOhm }
  }
}

/** An open contact carries nothing; what stands across it is worth knowing all the same. */
function withOpen({ nodeV, flows }: Solution, { parts }: PlainCircuit): Solution {
  const open = parts
    .filter(({ id }) => flows[id] === undefined)
    .map(({ id, from, to }): readonly [string, Flow] => [id, { currentA: 0, dropV: (nodeV[from] ?? 0) - (nodeV[to] ?? 0), powerW: 0 }])
  return { nodeV, flows: { ...flows, ...Object.fromEntries(open) } }
}

function requireSoundParts({ parts }: PlainCircuit): void {
  for (const part of parts)
    if (part.kind === 'power' && !(part.powerW >= 0 && part.powerW <= GREATEST_W))
      throw new OutsideRange('networkV', 'powerW', part.powerW, 0, GREATEST_W)
}
