import { type BoundsOf, boundsOf } from '../formula/bounds.ts'
import type { Given } from '../formula/given.ts'
import type { Finding } from '../rules/finding.ts'
import { bodyYields } from '../rules/joint/body-yields.ts'
import { crushesUnderShoulder } from '../rules/joint/crushes-under-shoulder.ts'
import { outsideBand } from '../rules/joint/outside-band.ts'
import { JOINT_RULES } from '../rules/list.ts'
import { asked } from '../rules/rule.ts'
import type { JointSubject } from '../rules/subjects.ts'
import type { Casting } from '../trade/joint/casting.ts'
import type { joint } from '../trade/joint/joint.ts'
import type { Thread } from '../trade/thread/thread.ts'
import type { Strength } from './joint.run.ts'

interface Asked {
  readonly torque: Given | null
  readonly bore: Given | null
  readonly neck: Given | null
  readonly casting: { readonly metal: Casting | null }
  readonly thread: Thread
  readonly part: Strength
}

/** The rules of a joint in a job, as far as the words have what they judge by: nothing pulls without a torque, or without a friction. */
export function jointFindings(
  { torque, bore, neck, casting: { metal }, thread, part }: Asked,
  r: BoundsOf<ReturnType<typeof joint>>
): readonly Finding[] {
  if (torque === null) return []
  const { low, high } = part.of(thread).tensileMpa
  const torqueNm = boundsOf({ torque }, x => x.torque)
  const subject: JointSubject = {
    ...r,
    torqueNm,
    typical: metal !== null,
    leastOfPart: low === high,
    castingMetal: metal,
    solid: bore === null,
    noNeck: neck === null,
    lacks: null
  }
  if (r.preloadN === null) return [asked(outsideBand, subject)]
  return JOINT_RULES.map(rule => asked(rule, subject)).filter(finding => !idle(finding, r))
}

/** A shoulder or a proof stress that nobody spoke of: `check` asks for it, a quick sum only says in a note what it left out. */
function idle({ rule, verdict }: Finding, { bearingPressureMpa }: BoundsOf<ReturnType<typeof joint>>): boolean {
  if (verdict !== 'not-judged') return false
  return rule === bodyYields.id || (rule === crushesUnderShoulder.id && bearingPressureMpa === null)
}
