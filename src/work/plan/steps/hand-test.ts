import type { Step } from '../../../report/plan/plan.ts'
import type { HoleInWork } from '../../job/judged-job.ts'
import { ofNumber, ofResult, written } from '../figure.ts'
import { type HoleStepsOf, step } from '../step.ts'
import { withoutText } from '../without-stack.ts'

/** Where the turns to the shoulder are nought: a mouth that is countersunk takes some of them without a turn. */
export const TURNS_FROM =
  'counted from the first full thread at its end level with the face, less those that it dropped into the mouth before it bit'

/** By hand the whole way to the shoulder, with everything under it that will be there. */
export const handTest: HoleStepsOf = hole => {
  const turns = ofResult(hole.result('seat.turns-to-shoulder'), 'turns', 'turns to the shoulder')
  if (turns === null) return undefined
  const band = turns.band
  const expected = band === '' ? '' : `: ${band.replace(/ *turns?$/, '')} with everything at its worst`
  return [
    ...cleaned(hole),
    step(
      'try by hand',
      hole.place,
      `screw the ${part(hole)} in by hand on its ${stack(hole)}, and count the turns to the shoulder${expected}`,
      {
        figure: turns,
        caution: [TURNS_FROM, withoutText(hole)].filter(said => said !== null).join('. '),
        blank: 'turns by hand',
        source: 'geometry'
      }
    ),
    step('try by hand', hole.place, 'try a feeler blade under the shoulder, all round: none goes in', {
      figure: written(ofNumber('gapMm', 'gap under the shoulder', 0), '0 mm'),
      caution: 'a gap, or turns missing: the thread or the floor has stopped it. Do not tighten',
      blank: 'gap felt'
    }),
    step('try by hand', hole.place, 'take it out again, and look at both threads')
  ]
}

function cleaned({ place }: HoleInWork): readonly Step[] {
  return [step('try by hand', place, 'clean the part, the hole and the face: no chip, no oil, no paint under the shoulder')]
}

function part({ hole }: HoleInWork): string {
  return hole.takes
}

function stack({ hole }: HoleInWork): string {
  const stack = hole['under-shoulder']
  return stack.length === 0 ? 'bare shoulder' : stack.map(({ what }) => what).join(' and ')
}
