import { SOURCES, type Source } from '../../formula/source.ts'

export type WireMaterial = 'copper' | 'aluminium' | 'steel'

export interface WireMaterialFacts {
  /** √(Qc·(β+20)/ρ20) of the standard, as it prints it. */
  readonly materialARootSPerMm2: number
  /** Degrees below 0 °C at which the resistance would vanish, β. */
  readonly zeroC: number
  readonly meltC: number
  readonly source: Source
}

export const WIRE_MATERIALS: Readonly<Record<WireMaterial, WireMaterialFacts>> = {
  copper: { materialARootSPerMm2: 226, zeroC: 234.5, meltC: 1083, source: SOURCES['iec-60364-5-54'] },
  aluminium: { materialARootSPerMm2: 148, zeroC: 228, meltC: 660, source: SOURCES['iec-60364-5-54'] },
  steel: { materialARootSPerMm2: 78, zeroC: 202, meltC: 1500, source: SOURCES['iec-60364-5-54-unseen'] }
}

export type InsulationKind = 'pvc' | 'xlpe' | 'unknown'

/** Hottest a conductor may get for up to 5 s. Of an insulation without a figure the lowest printed one holds, or its own rating where that is higher. */
export function shortTimeLimitC({ kind, insulationC }: { readonly kind: InsulationKind; readonly insulationC: number }): number {
  if (kind === 'xlpe') return 250
  return kind === 'pvc' ? 160 : Math.max(160, insulationC)
}
