import { SOURCES, type Source } from '../../formula/source.ts'
import { type PracticeName, perPractice } from '../../trade/practice-names.ts'

export interface GroundLimit {
  readonly value: number
  readonly says: string
  readonly source: Source
}

const WORKSHOP: GroundLimit = { value: 0.2, says: 'the whole ground side under load', source: SOURCES['workshop-drop'] }

/** Greatest voltage of a ground point against 0 V under load. No practice prints one of its own: the workshop's holds for all. */
export const GROUND_LIMITS: { readonly [N in PracticeName]: GroundLimit } = perPractice(WORKSHOP, {})
