import { SOURCES, type Source } from '../../formula/source.ts'

/** A mistake of the trade, how it shows, what to leave alone, and the way back. */
export interface Mishap {
  readonly id: string
  readonly says: string
  readonly shows: string
  readonly first: string
  readonly wayBack: string
  readonly source: Source
}

const ROWS = [
  {
    id: 'drilled-too-deep',
    says: 'the hole is drilled deeper than planned',
    shows: 'the stop has moved, or the depth felt with a rod is more than the plan',
    first: 'drill and tap no further; work out the metal left from the depth as it is now',
    wayBack:
      'enough metal left: tap to the planned depth and keep the part off the floor by its shoulder; too little: treat it as drilled through'
  },
  {
    id: 'drilled-through',
    says: 'the drill has broken through into what lies behind',
    shows: 'the drill drops or grabs, chips are gone, the rod finds no floor, liquid or air comes out',
    first: 'drain and open what lies behind, and get every chip out before it is filled or run',
    wayBack:
      'fuel, oil, coolant or vacuum behind: a new casting, or a repair that its maker and whoever approves it accept; a sealant alone is no repair'
  },
  {
    id: 'hole-oversize',
    says: 'the hole is larger than the greatest minor diameter',
    shows: 'the next drill size drops in, the tap turns too easily, the thread is shallow',
    first: 'measure the hole with the shank of a drill; do not tap and hope',
    wayBack:
      'thread height still enough for the joint: tap and reckon with that height; else a wire thread insert, if the hole is no larger than its own tapping hole'
  },
  {
    id: 'broken-tap',
    says: 'the tap has broken in the hole',
    shows: 'a snap, and the tap turns without effort or not at all',
    first: 'do not hammer, and do not drill it with a common drill: that wanders into the casting',
    wayBack:
      'pick out the pieces, turn it back by its flutes with an extractor, or have it burnt out by spark erosion; then clean and finish by hand, or go to an insert'
  },
  {
    id: 'crossed-thread',
    says: 'the thread was started askew or with the wrong pitch',
    shows: 'stiff from the first turn, the part leans, bright metal on one side of the mouth',
    first: 'stop at the first stiff turn and back out; more torque only cuts a second thread',
    wayBack:
      'first turns only: clean with a taper tap started by hand from the sound thread below; deeper: a wire thread insert, and a new part if its own thread is torn'
  },
  {
    id: 'tapped-askew',
    says: 'the tap went in out of square',
    shows: 'the shoulder bears on one side; feeler gauge enters on the other',
    first: 'do not pull it down with torque: the neck of the part bends',
    wayBack: 'spot-face square to the thread within what the neck and the seal allow; else open it square for an insert'
  },
  {
    id: 'stripped',
    says: 'the thread in the casting has come out',
    shows: 'torque stops rising or falls, metal in the threads of the part',
    first: 'take the part out by pulling while turning; keep the coil of metal out of the hole',
    wayBack: 'a wire thread insert where the wall and the depth allow it, else the next larger thread with its own part'
  },
  {
    id: 'tap-jammed-on-floor',
    says: 'the tap was driven against the floor or packed chips',
    shows: 'torque rises at once, short of or at the counted turns',
    first: 'back out, clear the chips, count the turns again',
    wayBack:
      'last turns stripped: what is above still counts, so judge the engagement by the sound turns; floor bulged or cracked: treat it as drilled through'
  }
] as const satisfies readonly Omit<Mishap, 'source'>[]

export const MISHAPS: readonly Mishap[] = ROWS.map(row => ({ ...row, source: SOURCES.practice }))
