import type { Plain } from '../../formula/given.ts'
import { solveNetwork } from '../circuit/solve-network.ts'
import { type Fault, OPEN_OHM, resisting } from './fault.ts'
import type { Tested } from './probe.ts'

/** A fuse or a breaker, by the run it is in, and what it carries in a circuit in order. */
export interface Protector {
  readonly id: string
  readonly currentA: number
}

/**
 * Nobody said what it is rated for. It carries its load at three quarters of its rating or so,
 * and opens within a minute at twice the rating (common practice): with this many times its load it is open.
 */
const OPENS_TIMES = 2.5

/** A fault that draws too much is measured with its fuse or breaker open: the one of them that is overloaded most. */
export function behindFuse(fault: Fault, protectors: readonly Protector[]): Fault {
  if (protectors.length === 0) return fault
  return {
    ...fault,
    changes: (tested, size) => {
      const after = fault.changes(tested, size)
      const open = overloaded(after, protectors)
      return open === undefined ? after : resisting(open.id, () => OPEN_OHM)(after, size)
    }
  }
}

function overloaded({ network }: Plain<Tested>, protectors: readonly Protector[]): Protector | undefined {
  const { flows } = solveNetwork(network)
  const times = ({ id, currentA }: Protector) => Math.abs(flows[id]!.currentA / currentA)
  const most = protectors.filter(({ currentA }) => currentA !== 0).sort((a, b) => times(b) - times(a))[0]
  return most !== undefined && times(most) > OPENS_TIMES ? most : undefined
}
