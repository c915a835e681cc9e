import { fact } from '../../formula/formula.ts'
import { recordStep } from '../../formula/working.ts'
import type { Conductor } from './conductor.ts'
import * as copper from './copper.ts'

/** Resistance of one metre at 20 °C: the greatest of the wire's table, or that of solid copper. */
export function conductorOhmPerM(conductor: Conductor): number {
  if (conductor.kind === 'solid') return copper.solidOhmPerM({ solidMm2: conductorMm2(conductor) })
  const { kind, size, source } = conductor
  const facts = fact('conductorOhmPerM', { says: 'greatest resistance at 20 °C', symbol: 'r20', source })
  recordStep(facts, conductor.conductorOhmPerM, () => `${kind} conductor of ${size.name}`)
  return conductor.conductorOhmPerM
}

/** Nominal section of the copper. A metric size is a name: its true section may be less. */
export function conductorMm2(conductor: Conductor): number {
  if (conductor.kind === 'solid') return copper.solidMm2({ solidMm: copper.solidMm({ gaugeCount: conductor.gaugeCount }) })
  const { kind, size, sectionSource } = conductor
  const facts = fact('conductorMm2', { says: 'nominal section', symbol: 'A', source: sectionSource })
  recordStep(facts, conductor.sectionMm2, () => `${kind} conductor of ${size.name}`)
  return conductor.sectionMm2
}
