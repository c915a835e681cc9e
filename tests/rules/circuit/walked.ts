import type { WalkedFault } from '../../../src/trade/circuit/fault-walk.ts'

/** A fault that does nothing worth a word, but for what is given. */
export function walked(effects: Partial<WalkedFault>): WalkedFault {
  return {
    fault: { kind: 'opened', id: 'run strap' },
    harm: 0,
    currentsA: {},
    opens: [],
    doubtful: [],
    backwards: [],
    overloads: [],
    lost: [],
    ...effects
  }
}
