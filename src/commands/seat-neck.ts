import { Given } from '../formula/given.ts'
import { silently } from '../formula/working.ts'
import type { Diagnostic } from '../quantity/diagnostic.ts'
import { type Rim, wideNeck } from '../trade/hole/neck-rim.ts'
import { onRim } from '../trade/hole/odd-lengths.ts'
import { basicSizes } from '../trade/thread/basic.ts'
import type { AskedDrill } from '../trade/thread/read-drill.ts'
import type { Thread } from '../trade/thread/thread.ts'
import type { NeckUntold } from '../work/job/neck-doubt.ts'
import { refusal } from './refusal.ts'

/** What the command line says of a neck and of the hole it goes into. */
interface Necked {
  readonly thread: Thread
  readonly neck: Given | null
  readonly undercut: Given
  readonly stack: readonly Given[]
  readonly crush: Given
  readonly mouth: Given
  readonly drill: AskedDrill | null
}

const ACCEPTED = 'a neck that goes into the hole, or --undercut: its length, no more than --stack and --mouth take up'

/** A neck that stands on the rim of its hole before the shoulder lands on its stack. */
export function neckFault(words: Necked): readonly Diagnostic[] | null {
  const found = words.neck === null ? null : standsOn(words.neck, words)
  return found === null ? null : refusal('--neck', found, ACCEPTED)
}

export function rimIn({ neck: neckMm, undercut: undercutMm, ...hole }: Necked): Rim | null {
  return wideNeck({ neckMm, undercutMm, clearMm: clearOf(hole), minorMm: minorOf(hole) })
}

/** A plain length of which nobody told how wide it is. */
export function neckUntold(words: Necked): NeckUntold {
  const wideMm = new Given(words.thread.majorMm)
  const untold = words.neck === null
  return {
    at: ['neck'],
    name: '--neck',
    seated: untold ? standsOn(wideMm, words) : null,
    bare: untold ? standsOn(wideMm, { ...words, stack: [], crush: new Given(0) }) : null
  }
}

function standsOn(neckMm: Given, { undercut, stack, crush: crushMm, mouth: mouthMm, ...hole }: Necked): string | null {
  const undercutMm = undercut.assumed === undefined ? undercut : null
  return silently(() => onRim({ neckMm, undercutMm, stack, crushMm, clearMm: clearOf(hole), mouthMm, thread: hole.thread }))
}

function clearOf({ thread, drill }: Pick<Necked, 'thread' | 'drill'>): number {
  return Math.max(minorOf({ thread }), drill?.diameterMm ?? 0)
}

function minorOf({ thread }: Pick<Necked, 'thread'>): number {
  return silently(() => basicSizes(thread)).minorDiameterMm
}
