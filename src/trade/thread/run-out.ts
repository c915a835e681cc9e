import { fact, formula } from '../../formula/formula.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'

export type RunOutForm = 'regular' | 'short' | 'long'

/** Drilled depth beyond the usable thread, by pitch, mm: DIN 76-1, regular, e1, as an open-source part library has it. */
const REGULAR: readonly (readonly [pitchMm: number, runOutMm: number])[] = [
  [0.2, 1.3],
  [0.25, 1.5],
  [0.3, 1.8],
  [0.35, 2.1],
  [0.4, 2.3],
  [0.45, 2.6],
  [0.5, 2.8],
  [0.6, 3.4],
  [0.7, 3.8],
  [0.75, 4],
  [0.8, 4.2],
  [1, 5.1],
  [1.25, 6.2],
  [1.5, 7.3],
  [1.75, 8.3],
  [2, 9.3],
  [2.5, 11.2],
  [3, 13.1],
  [3.5, 15.2],
  [4, 16.8],
  [4.5, 18.4],
  [5, 20.8],
  [5.5, 22.4],
  [6, 24]
]

export const RUN_OUT = fact('regularRunOutMm', { says: 'regular run-out of a blind hole', symbol: 'e1', source: SOURCES['din-76-1'] })
/** Equal within this share is the same pitch: an assumed pitch is nudged by less when its bounds are worked out, inch pitches differ by more. */
const SAME_RATIO = 0.002

export const shortRunOutMm = formula('shortRunOutMm', {
  says: 'short run-out of a blind hole',
  symbol: 'e2',
  equation: '0.6·e1',
  inputs: { regularRunOutMm: ['e1', 1, 24] },
  source: SOURCES['din-76-1-memory'],
  of: ({ regularRunOutMm }) => 0.6 * regularRunOutMm
})

export const longRunOutMm = formula('longRunOutMm', {
  says: 'long run-out of a blind hole',
  symbol: 'e3',
  equation: '1.5·e1',
  inputs: { regularRunOutMm: ['e1', 1, 24] },
  source: SOURCES['din-76-1-memory'],
  of: ({ regularRunOutMm }) => 1.5 * regularRunOutMm
})

/** What a blind hole is drilled beyond its usable thread. A pitch between two of the table takes the coarser one: the longer run-out. */
export function runOutMm({ pitchMm, form = 'regular' }: { readonly pitchMm: number; readonly form?: RunOutForm }): number {
  const regularRunOutMm = regularMm(pitchMm)
  switch (form) {
    case 'regular':
      return regularRunOutMm
    case 'short':
      return shortRunOutMm({ regularRunOutMm })
    case 'long':
      return longRunOutMm({ regularRunOutMm })
    default:
      return form satisfies never
  }
}

function regularMm(pitchMm: number): number {
  const [finest, coarsest] = [REGULAR[0]![0], REGULAR.at(-1)![0]]
  const leastMm = pitchMm * (1 - SAME_RATIO)
  const row = pitchMm * (1 + SAME_RATIO) >= finest ? REGULAR.find(([pitch]) => pitch >= leastMm) : undefined
  if (row === undefined) throw new OutsideRange('regularRunOutMm', 'pitchMm', pitchMm, finest, coarsest)
  recordStep(RUN_OUT, row[1], () => `pitch ${Number(pitchMm.toFixed(4))} mm: row ${row[0]}`)
  return row[1]
}
