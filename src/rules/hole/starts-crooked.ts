import { SOURCES } from '../../formula/source.ts'
import { showNumber } from '../../quantity/show.ts'
import { plainly } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'

interface Subject {
  /** Of the tap that is used first. */
  readonly first: { readonly name: string; readonly chamferTurns: number }
}

/** A chamfer of a bottoming tap, one to two pitches: it is made to finish a thread, not to begin one. */
const BOTTOMING_TURNS = 2

/** Whether the tap that begins the thread guides itself. */
export const startsCrooked: Rule<Subject> = {
  id: 'hole/starts-crooked',
  question: 'has the tap that begins the thread a chamfer to start with?',
  why: 'A bottoming tap does not guide itself in a plain hole: it starts crooked, cuts to full depth at once, and tears the first threads or breaks.',
  change: 'begin with a taper or a second tap; else start it in a guide, square to the face',
  source: SOURCES.practice,
  judge: ({ first: { name, chamferTurns } }): Judged => {
    const says = `the first tap, ${name}, has a chamfer of ${showNumber(chamferTurns, 'plain')} pitches`
    return chamferTurns > BOTTOMING_TURNS
      ? plainly('pass', says)
      : plainly('caution', `${says}: that of one that finishes a thread`, ['tools', 'taps'])
  }
}
