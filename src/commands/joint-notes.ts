import type { Bounded, BoundsOf } from '../formula/bounds.ts'
import { SOURCES } from '../formula/source.ts'
import { showNumber } from '../quantity/show.ts'
import type { Table } from '../report/answer.ts'
import type { Casting } from '../trade/joint/casting.ts'
import type { joint } from '../trade/joint/joint.ts'
import { PRELOAD_SCATTER } from '../trade/joint/preload-scatter.ts'
import { handTapTorqueNm } from '../trade/joint/tapping-torque.ts'
import { takenDrill } from '../trade/thread/taken-drill.ts'
import type { Thread } from '../trade/thread/thread.ts'

interface Asked {
  readonly thread: Thread
  readonly casting: { readonly metal: Casting | null }
}

/** What no rule asks. */
export function jointNotes({ thread, casting: { metal } }: Asked, r: BoundsOf<ReturnType<typeof joint>>): readonly string[] {
  return [
    ...(metal === null ? [] : ['strengths of an alloy are typical values of cast bars, not of a wall in a real casting: keep a margin']),
    ...(r.firstToGive === null ? [] : [`first to give as the torque rises: ${r.firstToGive}`]),
    ...(r.firstToGive !== null && r.proofTorqueNm === null
      ? ['the body is held against breaking alone: its proof stress, at which it begins to stretch for good, is not known']
      : []),
    ...tappingNote(thread, metal)
  ]
}

/** What a tap asks for in this metal, where a maker of taps prints its cutting force. */
function tappingNote(thread: Thread, metal: Casting | null): readonly string[] {
  const torqueNm = metal === null ? null : handTapTorqueNm({ thread, metal: metal.metal, holeMm: takenDrill(thread).diameterMm })
  if (torqueNm === null) return []
  return [
    `cutting this thread takes about ${showNumber(torqueNm, 'torque')} N·m with a sharp bottoming tap and no chips jammed, a forming tap two to three times that (${SOURCES['tap-maker-torque'].title}, ${SOURCES['tap-maker-torque'].label}); what breaks a hand tap is not published`
  ]
}

/** How far off the preload may be by the way of tightening: of the nominal, whatever the bounds given for the friction. */
export function scatterTable(preload: Bounded | null): { readonly [name: string]: Table } {
  if (preload === null || !(preload.value > 0)) return {}
  return {
    'preload-scatter': {
      name: 'preload by the way of tightening, of its nominal',
      columns: [
        { key: 'method', name: 'method', unit: '' },
        { key: 'percent', name: '±', unit: '%', shown: 'percent' },
        { key: 'least', name: 'least', unit: 'N', shown: 'force' },
        { key: 'greatest', name: 'greatest', unit: 'N', shown: 'force' },
        { key: 'source', name: 'source', unit: '' }
      ],
      rows: PRELOAD_SCATTER.map(({ method, plusMinusPercent, source }) => ({
        method,
        percent: plusMinusPercent,
        least: preload.value * (1 - plusMinusPercent / 100),
        greatest: preload.value * (1 + plusMinusPercent / 100),
        source: source.id
      }))
    }
  }
}
