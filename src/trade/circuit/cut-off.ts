import { floatingParts } from './floating-parts.ts'
import type { Branch, PlainElement, PlainNetwork } from './network.ts'
import type { PlainCircuit, PlainPart } from './part.ts'
import { spread } from './spread.ts'

/**
 * A circuit in which what open contacts cut off is open as well: what nothing but an open contact ties to the 0 V node is dead,
 * and a load of fixed current or power that no source reaches takes nothing. What hangs on nothing at all is left for others to refuse.
 */
export function withoutCutOff(circuit: PlainCircuit): PlainCircuit {
  const closed = circuit.parts.filter(part => !isOpen(part))
  if (closed.length === circuit.parts.length) return circuit
  const dead = deadNodes(circuit, closed)
  const tied = closed.filter(({ from, to }) => !dead.has(from) && !dead.has(to))
  const alive = new Set(tied.filter(part => !isDraw(part) || isDriven(part, tied)))
  return { ...circuit, parts: circuit.parts.map(part => (alive.has(part) || isOpen(part) ? part : opened(part))) }
}

function isOpen(part: PlainPart): boolean {
  return part.kind === 'contact' && part.state === 'open'
}

function isDraw({ kind }: PlainPart): boolean {
  return kind === 'draw' || kind === 'power'
}

function opened({ id, from, to }: PlainPart): PlainPart {
  return { kind: 'contact', state: 'open', contactOhm: 0, id, from, to }
}

function deadNodes({ ground, parts }: PlainCircuit, closed: readonly PlainPart[]): ReadonlySet<string> {
  const loose = new Set(floatingParts(asDrawn(ground, parts)).flat())
  return new Set(
    floatingParts(asDrawn(ground, closed))
      .flat()
      .filter(node => !loose.has(node))
  )
}

/** All that ties is alike here. */
function asDrawn(ground: string, parts: readonly PlainPart[]): PlainNetwork {
  return {
    ground,
    elements: parts.map((part): PlainElement => {
      const { id, from, to } = part
      return isDraw(part) ? { kind: 'draw', id, from, to, drawA: 0 } : { kind: 'resistor', id, from, to, resistanceOhm: 0 }
    })
  }
}

/** Whether a round leads through a load and a source that passes no point twice: then no single point parts the two. */
function isDriven(load: PlainPart, parts: readonly PlainPart[]): boolean {
  const points = new Set(parts.flatMap(({ from, to }) => [from, to]))
  return parts.some(part => part.kind === 'source' && [...points].every(point => isJoined(load, part, { parts, without: point })))
}

function isJoined(
  load: Branch,
  source: Branch,
  { parts, without }: { readonly parts: readonly Branch[]; readonly without: string }
): boolean {
  const others = parts.filter(({ from, to }) => from !== without && to !== without)
  const found = spread(load.from === without ? load.to : load.from, others)
  return [source.from, source.to].some(point => point !== without && found.has(point))
}
