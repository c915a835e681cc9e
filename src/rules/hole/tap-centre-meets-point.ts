import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { centreGapMm as facts } from '../../trade/hole/tapping.ts'
import { atLeast, notJudged, plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly majorMm: number
  /** Null where nobody said how far a centre reaches; nought where there is none. */
  readonly taps: readonly { readonly name: string; readonly centreGapMm: Bounded | null }[]
}

/** Taps up to about 3/8 inch often come with a pointed end (a tap maker, read-secondary). */
const POINTED_TO_MM = 10

/** Whether every front centre stays clear of the end of the drilled point. */
export const tapCentreMeetsPoint: Rule<Subject> = {
  id: 'hole/tap-centre-meets-point',
  question: 'does the front centre of every tap stay clear of the drilled point?',
  why: 'A centre that meets the floor stops the tap short, and the next half turn breaks it.',
  change: 'grind the centre off, or stop the tap earlier with more tap-clear',
  source: SOURCES['tap-depth'],
  judge: ({ majorMm, taps }) => {
    const centred = taps.flatMap(({ name, centreGapMm }) => (centreGapMm === null ? [] : [{ name, centreGapMm }]))
    if (majorMm <= POINTED_TO_MM && centred.length < taps.length)
      return notJudged('taps.centre', 'measure how far each tap reaches beyond the smallest thread of its chamfer; 0 mm where it is flat')
    if (centred.length === 0) return plainly('pass', 'no tap is said to have a front centre, and taps of this size seldom have one')
    const { name, centreGapMm } = centred.reduce((a, b) => (b.centreGapMm.low < a.centreGapMm.low ? b : a))
    return atLeast({ ...facts, says: `${name} tap: ${facts.says}` }, centreGapMm, { value: 0 })
  }
}
