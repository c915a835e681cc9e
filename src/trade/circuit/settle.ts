import { fact } from '../../formula/formula.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { SOURCES } from '../../formula/source.ts'
import { isRecording, recordStep, silently } from '../../formula/working.ts'
import { quoted } from '../../quantity/quoted.ts'
import type { PartOf, PlainCircuit, Settled } from './part.ts'
import { warmed } from './warmed-circuit.ts'
import { ohmAt, settledC } from './warmth.ts'

type Contacts = Settled['contacts']

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
  if (relaysOf(circuit).length === 0) return warmed(circuit, {})
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

function requireSoundParts({ parts }: PlainCircuit): void {
  for (const part of parts)
    if (part.kind === 'power' && !(part.powerW >= 0 && part.powerW <= GREATEST_W))
      throw new OutsideRange('networkV', 'powerW', part.powerW, 0, GREATEST_W)
}
