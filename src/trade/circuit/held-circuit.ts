import { FactoredNetwork } from './factored-network.ts'
import type { PlainElement, PlainNetwork } from './network.ts'
import { hasRow, KNOWN, type Layout, layoutOf } from './network-layout.ts'
import { requireRange } from './network-limits.ts'
import type { PartOf, PlainCircuit, PlainPart, Settled } from './part.ts'
import { powerPoints } from './power-points.ts'
import { soundLayout } from './sound-layout.ts'
import { ohmAt } from './warmth.ts'

/** A part that follows its own temperature, and its number among the elements of the network. */
export interface Warming {
  readonly part: PartOf<'warming' | 'wire'>
  readonly at: number
}

/** A circuit with its contacts held. From one temperature to the next nothing but resistances is another: what hangs on what is looked at once. */
export class HeldCircuit {
  readonly warming: readonly Warming[]
  /** As it is before anything has warmed. */
  private readonly cold: PlainNetwork
  private readonly layout: Layout
  private readonly loads: readonly PartOf<'power'>[]

  constructor({ ground, parts }: PlainCircuit, contacts: Settled['contacts']) {
    const conducting = parts.filter(part => !isOpen(part, contacts))
    this.warming = conducting.flatMap((part, at) => (follows(part) ? [{ part, at }] : []))
    this.loads = parts.filter(part => part.kind === 'power')
    this.cold = { ground, elements: conducting.map(elementOf) }
    this.layout = soundLayout(this.cold)
  }

  /** With these resistances of what follows its temperature: linear but for its loads of constant power. */
  at(ohms: readonly number[]): FactoredNetwork {
    const elements = this.cold.elements.slice()
    for (const [i, { part, at }] of this.warming.entries()) elements[at] = resistor(part, ohms[i]!)
    for (const { at } of this.warming) requireRange(elements[at]!)
    return this.drawn({ ...this.cold, elements })
  }

  private drawn(network: PlainNetwork): FactoredNetwork {
    const layout = this.warming.every(({ at }) => hasRow(network.elements[at]!) === (this.layout.row[at] !== KNOWN))
      ? this.layout
      : layoutOf(network)
    const base = new FactoredNetwork(network, layout)
    if (this.loads.length === 0) return base
    const amps = new Map(powerPoints(base, this.loads).map((a, i) => [this.loads[i]!.id, a]))
    return new FactoredNetwork({ ...network, elements: network.elements.map(one => drawing(one, amps)) }, layout)
  }
}

function follows(part: PlainPart): part is PartOf<'warming' | 'wire'> {
  return part.kind === 'warming' || part.kind === 'wire'
}

function isOpen(part: PlainPart, contacts: Settled['contacts']): boolean {
  return part.kind === 'contact' ? part.state === 'open' : part.kind === 'relay' && contacts[part.id] === 'open'
}

function elementOf(part: PlainPart): PlainElement {
  switch (part.kind) {
    case 'resistor':
    case 'source':
    case 'draw':
      return part
    case 'power':
      return { kind: 'draw', id: part.id, from: part.from, to: part.to, drawA: 0 }
    case 'warming':
    case 'wire':
      return resistor(part, ohmAt(part, part.ambientC))
    case 'contact':
    case 'relay':
      return resistor(part, part.contactOhm)
  }
}

function resistor({ id, from, to }: PlainPart, resistanceOhm: number): PlainElement {
  return { kind: 'resistor', id, from, to, resistanceOhm }
}

function drawing(element: PlainElement, amps: ReadonlyMap<string, number>): PlainElement {
  const drawA = amps.get(element.id)
  return drawA === undefined || element.kind !== 'draw' ? element : { ...element, drawA }
}
