import type { BoundsOf } from '../formula/bounds.ts'
import type { Given } from '../formula/given.ts'
import type { Table } from '../report/answer.ts'
import { handTapping } from '../trade/hole/hand-tapping.ts'
import type { hole } from '../trade/hole/hole.ts'
import { stepDrills } from '../trade/hole/step-drills.ts'
import type { Tap } from '../trade/hole/taps.ts'
import type { Thread } from '../trade/thread/thread.ts'

interface Asked {
  readonly thread: Thread
  readonly 'found-diameter': Given
  readonly taps: readonly Tap[]
}

/** The drills to step up with, where one drill would take too much at once; counted from the narrowest that the hole may be. */
export function stepDrillTable({ thread, 'found-diameter': found }: Asked, drillMm: Given): { readonly [name: string]: Table } {
  const steps = stepDrills({ foundDiameterMm: found.low, drillMm: drillMm.value, system: thread.system })
  if (steps.length === 0) return {}
  return {
    'step-drills': {
      name: 'drills to step up with, all to the same stop (common practice)',
      columns: [
        { key: 'name', name: 'drill', unit: '' },
        { key: 'diameter', name: 'diameter', unit: 'mm', shown: 'limit' },
        { key: 'opens', name: 'takes, on the diameter', unit: 'mm', shown: 'length' }
      ],
      rows: steps.map(({ drill: { name, diameterMm }, opensMm }) => ({ name, diameter: diameterMm, opens: opensMm }))
    }
  }
}

/** How each tap is turned by hand. */
export function handTappingTable({ taps, thread: { majorMm, pitchMm } }: Asked, r: BoundsOf<ReturnType<typeof hole>>): Table {
  return {
    name: 'turning the taps by hand (common practice; teaching pages differ)',
    columns: [
      { key: 'tap', name: 'tap', unit: '' },
      { key: 'forward', name: 'turns forward', unit: '', shown: 'factor' },
      { key: 'back', name: 'turns back', unit: '', shown: 'factor' },
      { key: 'clear', name: 'out to clear chips every, turns', unit: '', shown: 'plain' },
      { key: 'turns', name: 'turns in all', unit: '', shown: 'turns-down' },
      { key: 'end', name: 'its end below the face', unit: 'mm', shown: 'depth-down' }
    ],
    rows: taps.map(({ name, chamferTurns }, i) => {
      const { forwardTurns, backTurns, clearTurns } = handTapping({ chamferTurns: chamferTurns.value, majorMm })
      const turns = r.taps[i]!.tapTurns.low
      return { tap: name, forward: forwardTurns, back: backTurns, clear: clearTurns, turns, end: turns * pitchMm }
    })
  }
}
