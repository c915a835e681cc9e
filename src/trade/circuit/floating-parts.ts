import { NoAnswer } from '../../formula/no-answer.ts'
import { quoted } from '../../quantity/quoted.ts'
import { nodesOf, type PlainNetwork } from './network.ts'
import { spread } from './spread.ts'

/**
 * Groups of nodes that nothing ties to the 0 V node, so that their voltage is anything.
 * A load of fixed current ties nothing: it lets its current through at any voltage.
 */
export function floatingParts(network: PlainNetwork): readonly (readonly string[])[] {
  const ties = network.elements.filter(({ kind }) => kind !== 'draw')
  const parts: string[][] = []
  const seen = spread(network.ground, ties)
  for (const node of nodesOf(network)) {
    if (seen.has(node)) continue
    const part = [...spread(node, ties)]
    parts.push(part)
    for (const one of part) seen.add(one)
  }
  return parts
}

/** In words; nothing where nothing floats. */
export function refuseFloating(network: PlainNetwork): void {
  const parts = floatingParts(network)
  if (parts.length === 0) return
  const names = parts.map(part => part.map(node => quoted(node)).join(' with '))
  throw new NoAnswer(
    `no path to the 0 V node ${quoted(network.ground)} from ${names.join(', nor from ')}: the voltage there is not determined`,
    'join it to the rest through a wire, a joint or a load, or leave out what hangs on it'
  )
}
