import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { threeDigits } from '../../trade/circuit/three-digits.ts'
import { plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly load: string
  /** Of its `from` over its `to`. */
  readonly atV: Bounded
  /** The sources that drive its current from its `to` to its `from`; none where it is fed the way it is drawn. */
  readonly reversedBy: readonly string[]
}

/** Whether a load, with nothing at fault, gets its voltage the wrong way round. */
export const reversed: Rule<Subject> = {
  id: 'circuit/reversed',
  question: 'does each load get its voltage the right way round?',
  why: 'A heater does not mind; electronics are destroyed, a motor runs backwards, and between two feeds stands the sum of both.',
  change: 'draw and wire plus to plus: a source gives at its `to`, a load takes at its `from`',
  source: SOURCES.kirchhoff,
  judge: ({ load, atV, reversedBy }) => {
    if (reversedBy.length === 0) return plainly('pass', `load ${load} is fed the way it is drawn`)
    return plainly(
      'caution',
      `load ${load} gets its voltage backwards, ${threeDigits(atV.value)} V: ${reversedBy.join(' and ')} drives it so, as drawn`
    )
  }
}
