import { SOURCES, type Source } from '../../formula/source.ts'
import type { PracticeName } from '../../trade/practice-names.ts'

/** How long a load is on at a time. Where a practice prints no other figure for a short one, the same holds. */
export const DUTIES = ['continuous', 'intermittent'] as const
export type Duty = (typeof DUTIES)[number]

/** A greatest drop, as a share of the bus or in volts, for the systems it is meant for. */
export interface DropLimit {
  readonly unit: '%' | 'V'
  readonly value: number
  /** Nominal system voltages from and up to which it is meant. */
  readonly fromV: number
  readonly toV: number
  readonly duty: Duty | 'any'
  readonly source: Source
}

/** What a practice allows circuits that nothing hangs on; never taken unasked. */
export interface LooserDrop {
  readonly percent: number
  readonly says: string
  readonly source: Source
}

/** The limits that go with a kind of machine: data, each with its source. */
export interface Practice {
  readonly name: PracticeName
  readonly says: string
  readonly drop: readonly DropLimit[]
  readonly looser?: LooserDrop
}

const anyVoltage = { fromV: 0, toV: 60, duty: 'any' } as const
const on14V = { fromV: 11, toV: 15 } as const
const on28V = { fromV: 22, toV: 30 } as const
const CONTINUOUS = SOURCES['ac-43.13-1b-11-6']
const INTERMITTENT = SOURCES['ac-43.13-1b-11-6-intermittent']

export const PRACTICES: { readonly [N in PracticeName]: Practice } = {
  general: {
    name: 'general',
    says: 'plant and machines in general',
    drop: [{ unit: '%', value: 3, ...anyVoltage, source: SOURCES.practice }]
  },
  road: { name: 'road', says: 'road and off-road vehicles', drop: [{ unit: '%', value: 3, ...anyVoltage, source: SOURCES.practice }] },
  boat: {
    name: 'boat',
    says: 'small craft, critical circuits',
    drop: [{ unit: '%', value: 3, ...anyVoltage, source: SOURCES['abyc-e-11'] }],
    looser: {
      percent: 10,
      says: 'the 3 % are asked of critical circuits (lights for navigation, bilge pumps and blowers, main feeds); others may lose 10 %',
      source: SOURCES['abyc-e-11']
    }
  },
  aircraft: {
    name: 'aircraft',
    says: 'small aircraft',
    drop: [
      { unit: 'V', value: 0.5, ...on14V, duty: 'continuous', source: CONTINUOUS },
      { unit: 'V', value: 1, ...on28V, duty: 'continuous', source: CONTINUOUS },
      { unit: 'V', value: 1, ...on14V, duty: 'intermittent', source: INTERMITTENT },
      { unit: 'V', value: 2, ...on28V, duty: 'intermittent', source: INTERMITTENT }
    ]
  }
}

/** The limit of drop for a bus; undefined where the practice has none at that voltage. */
export function dropLimit(practice: PracticeName, busV: number, duty: Duty = 'continuous'): DropLimit | undefined {
  return PRACTICES[practice].drop.find(row => busV >= row.fromV && busV <= row.toV && (row.duty === 'any' || row.duty === duty))
}
