import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { breakMarginMpa as beyond, bodyMarginMpa as facts } from '../../trade/joint/body.ts'
import { type BodyUnknown, bodyAssumes, bodyDoubts } from '../body-doubts.ts'
import { atLeast, doubted, type Lack, missing, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject extends BodyUnknown {
  readonly bodyMarginMpa: Bounded | null
  /** What is left to the tensile strength: a body that breaks has yielded before, whatever its proof stress. */
  readonly breakMarginMpa: Bounded | null
  readonly preloadN: Bounded | null
  readonly lacks: Lack | null
}

/** Whether the hollow body stays below its proof stress. */
export const bodyYields: Rule<Subject> = {
  id: 'joint/body-yields',
  question: 'does the body of the part stay below its proof stress, pulled and twisted?',
  why: 'A hollow body stretches at a torque that a bolt of its size would laugh at; its element cracks, and the clamp is gone.',
  change: 'take a lower torque, or a part with more metal round its bore',
  source: SOURCES['strength-of-materials'],
  judge: ({ bodyMarginMpa, breakMarginMpa, preloadN, lacks, ...body }) => {
    if (preloadN === null) return missing(lacks)
    if (breakMarginMpa !== null && breaks(breakMarginMpa, bodyMarginMpa)) return atLeast(beyond, breakMarginMpa, { value: 0 })
    return bodyMarginMpa === null
      ? notJudged('body.proof', 'the sheet of its material: the stress that it stands without a lasting stretch')
      : bodyAssumes(doubted(atLeast(facts, bodyMarginMpa, { value: 0 }), bodyDoubts(body)), body)
  }
}

/** Pulled to its tensile strength, and that comes before what is called its proof stress or none is known. */
function breaks({ low }: Bounded, bodyMarginMpa: Bounded | null): boolean {
  return low <= 0 && (bodyMarginMpa === null || low < bodyMarginMpa.low)
}
