import type { Table } from '../report/answer.ts'
import type { Identification } from '../trade/thread/identify.ts'
import type { Side } from '../trade/thread/identify-crest.ts'
import type { Fit } from '../trade/thread/identify-fit.ts'
import { isParallelPipe } from '../trade/thread/parallel-pipe.ts'
import type { Pipe } from '../trade/thread/taper-pipe-like.ts'
import type { Found } from './thread-identified.ts'

type Row = Table['rows'][number]

/** What the measured thread may be, best first; tapered pipe threads that measure so come last. */
export function candidateTable(found: Found, side: Side): Table {
  return {
    name: 'candidates',
    columns: [
      { key: 'name', name: 'thread', unit: '' },
      { key: 'verdict', name: 'verdict', unit: '' },
      { key: 'off', name: 'off', unit: 'mm', shown: 'limit' },
      { key: 'pitch', name: 'pitch', unit: 'mm', shown: 'limit' },
      { key: 'pitch-off', name: 'pitch off', unit: 'mm', shown: 'limit' }
    ],
    rows: rowsOf(found, side)
  }
}

function rowsOf(found: Found, side: Side): readonly Row[] {
  switch (found.kind) {
    case 'parallel':
      return [
        ...found.ranked.map(fit => fitRow(fit, isParallelPipe(fit) ? 'parallel pipe' : 'parallel')),
        ...found.pipes.map(pipe => pipeRow(pipe, side, 'measures the same at one place'))
      ]
    case 'tapered':
      return found.pipes.map(pipe => pipeRow(pipe, side, 'fits'))
    case 'nothing':
      return []
    default:
      return found satisfies never
  }
}

function fitRow({ candidate: { name, pitchMm }, band, offMm, pitchOffMm, verdict }: Fit, kind: 'parallel' | 'parallel pipe'): Row {
  return { name, kind, verdict, least: band.minMm, greatest: band.maxMm, off: offMm, pitch: pitchMm, 'pitch-off': pitchOffMm }
}

/** Over the length of its thread a tapered one has every diameter between two. */
function pipeRow({ thread, pitchOffMm }: Pipe, side: Side, verdict: string): Row {
  const [least, greatest] = side === 'external' ? thread.externalMm : thread.internalMm
  return { name: thread.name, kind: 'tapered', verdict, least, greatest, off: null, pitch: thread.pitchMm, 'pitch-off': pitchOffMm }
}

/** Which measurement splits the best from the others that fit. */
export function tellTable({ tells }: Extract<Identification, { kind: 'parallel' }>): Table {
  return {
    name: 'what tells them apart',
    columns: [
      { key: 'first', name: 'thread', unit: '' },
      { key: 'second', name: 'or', unit: '' },
      { key: 'by', name: 'split by', unit: '' },
      { key: 'says', name: 'how', unit: '' }
    ],
    rows: tells.map(({ first, second, by, says }) => ({ first, second, by, says }))
  }
}
