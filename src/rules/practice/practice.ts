import { SOURCES, type Source } from '../../formula/source.ts'

/** A greatest drop, as a share of the bus or in volts, for the systems it is meant for. */
export interface DropLimit {
  readonly unit: '%' | 'V'
  readonly value: number
  /** Nominal system voltages from and up to which it is meant. */
  readonly fromV: number
  readonly toV: number
  readonly source: Source
}

/** The limits that go with a kind of machine: data, each with its source. */
export interface Practice {
  readonly name: PracticeName
  readonly says: string
  readonly drop: readonly DropLimit[]
}

export const PRACTICE_NAMES = ['general', 'road', 'boat', 'aircraft'] as const
export type PracticeName = (typeof PRACTICE_NAMES)[number]

const anyVoltage = { fromV: 0, toV: 60 }

export const PRACTICES: { readonly [N in PracticeName]: Practice } = {
  general: {
    name: 'general',
    says: 'plant and machines in general',
    drop: [{ unit: '%', value: 3, ...anyVoltage, source: SOURCES.practice }]
  },
  road: { name: 'road', says: 'road and off-road vehicles', drop: [{ unit: '%', value: 3, ...anyVoltage, source: SOURCES.practice }] },
  boat: { name: 'boat', says: 'small craft', drop: [{ unit: '%', value: 3, ...anyVoltage, source: SOURCES['abyc-e-11'] }] },
  aircraft: {
    name: 'aircraft',
    says: 'small aircraft, continuous loads',
    drop: [
      { unit: 'V', value: 0.5, fromV: 11, toV: 15, source: SOURCES['ac-43.13-1b-11-6'] },
      { unit: 'V', value: 1, fromV: 22, toV: 30, source: SOURCES['ac-43.13-1b-11-6'] }
    ]
  }
}

/** The limit of drop for a bus; undefined where the practice has none at that voltage. */
export function dropLimit(practice: PracticeName, busV: number): DropLimit | undefined {
  return PRACTICES[practice].drop.find(({ fromV, toV }) => busV >= fromV && busV <= toV)
}
