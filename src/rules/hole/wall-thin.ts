import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { wallLeftMm as facts } from '../../trade/hole/depth.ts'
import type { WallNeeds } from '../../trade/hole/wall.ts'
import { atLeast, figure, neverFails, notJudged } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'

interface Subject {
  readonly wallLeftMm: Bounded | null
  readonly wallNeeds: WallNeeds
}

/** No standard gives a least wall. Thinner than the thread is deep fails (our own limit); thinner than anything can be said for is told. */
export const wallThin: Rule<Subject> = {
  id: 'hole/wall-thin',
  question: 'is the wall beside the thread so thick that something can be said of the thread and of an insert in it?',
  why: 'A thin wall gives way under the flanks: the thread strips below its reckoned strength, and no insert brings it back.',
  change: 'take a smaller thread or another place, or ask somebody who can answer for that wall',
  source: SOURCES.alexander,
  judge: ({ wallLeftMm, wallNeeds }) =>
    wallLeftMm === null
      ? notJudged('casting.wall', 'measure from the hole to the nearest face with a calliper')
      : against(wallLeftMm, wallNeeds)
}

function against(wallLeftMm: Bounded, { heightMm, strengthMm, insertMm }: WallNeeds): Judged {
  const { low } = wallLeftMm
  if (!(low >= heightMm))
    return atLeast(facts, wallLeftMm, {
      value: heightMm,
      source: SOURCES.practice,
      reason: `as thick as the thread is deep, our own limit; nothing can be said for less than ${figure(insertMm, facts)}`
    })
  if (low < strengthMm) return neverFails(atLeast(facts, wallLeftMm, { value: insertMm, reason: unknown(strengthMm) }))
  return neverFails(atLeast(facts, wallLeftMm, { value: insertMm, reason: 'with less there is no way back by a wire thread insert' }))
}

function unknown(strengthMm: number): string {
  const own = `with less than ${figure(strengthMm, facts)}, 1.4 diameters of metal in all, not even of the thread itself`
  return `with less, nothing can be said of the thread of an insert, and ${own}`
}
