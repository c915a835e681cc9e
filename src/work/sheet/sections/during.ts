import { thingName } from '../../../report/plan/thing-name.ts'
import type { BigNumber, Block } from '../../../report/sheet/sheet.ts'
import type { HoleInWork } from '../../job/judged-job.ts'
import { drillMmOf } from '../../plan/drill-of.ts'
import { inBoth, ofGiven, ofNumber, ofResult } from '../../plan/figure.ts'
import { TURNS_FROM } from '../../plan/steps/hand-test.ts'
import { tapsOf } from '../../plan/taps-of.ts'
import type { SectionOf } from '../section.ts'

/** The numbers that are set and counted, large enough to read with both hands full. */
export const during: SectionOf = judged => {
  const blocks = judged.holes.flatMap(numbersOf)
  return blocks.length === 0 ? undefined : { id: 'during', heading: 'During: stop, turns, torque', blocks }
}

function numbersOf(hole: HoleInWork): readonly Block[] {
  const numbers = [...drill(hole), ...turns(hole), ...seat(hole), ...torque(hole)]
  return numbers.length === 0 ? [] : [{ kind: 'numbers', caption: thingName(hole.place), numbers }]
}

function drill({ hole, part, result }: HoleInWork): readonly BigNumber[] {
  const stop = ofResult(result('hole.tip-depth'), 'depth-down')
  if (stop === null) return []
  const size = inBoth(ofNumber('drillMm', 'drill', drillMmOf({ hole, part })), 'drill')
  return [
    { value: size.text, name: 'drill', says: `for ${part.thread.name}` },
    { value: inBoth(stop, 'depth-down').text, name: 'depth stop', says: 'tip of the drill below the face' }
  ]
}

function turns(hole: HoleInWork): readonly BigNumber[] {
  return tapsOf(hole).flatMap(({ name, turns, end, thread }) => {
    if (turns === null || end === null || turns.value <= 0) return []
    const leaves = thread === null || thread.value <= 0 ? '' : `; leaves ${thread.text} of full thread`
    return [
      {
        value: end.text,
        name: `${name} tap: its end below the face`,
        says: 'mark the shank so far from the smallest thread of its chamfer, a front centre not counted; or note how much stands out'
      },
      {
        value: turns.text,
        name: `${name} tap`,
        says: `from its end level with the face, less those that it dropped in before it bit${leaves}`
      }
    ]
  })
}

function seat({ hole, result }: HoleInWork): readonly BigNumber[] {
  const count = ofResult(result('seat.turns-to-shoulder'), 'turns')
  const under = hole['under-shoulder'].map(({ what }) => what).join(' and ')
  return count === null
    ? []
    : [
        {
          value: count.text,
          name: 'by hand to the shoulder',
          says: `${under === '' ? 'on the bare shoulder' : `with ${under} under it`}, ${TURNS_FROM}`
        }
      ]
}

function torque({ part }: HoleInWork): readonly BigNumber[] {
  if (part.torque === null) return []
  return [
    {
      value: ofGiven('cardNm', '', part.torque.card).text,
      name: 'torque',
      says: `on ${part.torque.threads ?? 'what the card means by its'} threads`
    }
  ]
}
