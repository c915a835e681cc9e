import type { Step } from '../../../report/plan/plan.ts'
import type { HoleInWork } from '../../job/judged-job.ts'
import { inBoth, ofGiven } from '../figure.ts'
import { type HoleStepsOf, step } from '../step.ts'
import { isTerminal } from '../terminal.ts'
import { withoutText } from '../without-stack.ts'
import { torquing } from './torquing.ts'

/** Compound, stack, torque, mark. */
export const fitting: HoleStepsOf = (hole, judged) => [
  compound(hole),
  ...stack(hole),
  ...(torquing(hole, judged) ?? []),
  step('fit', hole.place, 'draw a line over shoulder and casting, so that a turn shows')
]

function compound({ place, hole, part }: HoleInWork): Step {
  const card = part.torque?.threads ?? null
  const means = card === null ? 'ask the maker whether the card means dry or lubricated threads' : `the torque card means ${card} threads`
  const lubricant = hole['threads-with']
  if (lubricant === null) return step('fit', place, 'ask what goes on the threads', { blank: 'on the threads', caution: means })
  if (lubricant === 'nothing') return step('fit', place, 'clean and dry the threads of part and hole', { caution: means })
  return step(
    'fit',
    place,
    `put ${lubricant.replaceAll('-', ' ')} thinly on the threads; none on the shoulder, none in the bottom of the hole`,
    {
      caution: card === 'lubricated' ? means : `${means}: with this on them the same torque pulls more. Ask the maker, do not guess`
    }
  )
}

/** Once it is pulled down nothing can be crimped to it. */
function lead({ place }: HoleInWork, what: string): readonly Step[] {
  if (!isTerminal(what)) return []
  return [step('fit', place, `crimp the lead to the ${what} first, cut to the length that stands under wire, and pull at the crimp`)]
}

/** In the order in which they are slid on. */
function stack(work: HoleInWork): readonly Step[] {
  const without = withoutText(work) ?? undefined
  return work.hole['under-shoulder'].flatMap(({ what, thickness }, i) => [
    step('fit', work.place, `measure the ${what}: flat, and bare on both sides`, {
      figure: inBoth(ofGiven('thicknessMm', `thickness of the ${what}`, thickness), 'length'),
      blank: `thickness of the ${what}`
    }),
    ...lead(work, what),
    step('fit', work.place, `put the ${what} under the shoulder`, { caution: i === 0 ? without : undefined })
  ])
}
