import { type DrawnRun, pointText } from './drawn.ts'
import { type Fault, OPEN_OHM, resisting } from './fault.ts'

/** A joint that loses less under its current is in order by any practice, and more resistance than the second is as good as open. */
const LEAST_LOSS_V = 0.03
const MOST_TIMES = 30
/** A run with less current than this shows nothing. */
const LEAST_A = 0.005

/** What a run carries in a circuit in order, and the voltage behind it. */
export interface RunDuty {
  readonly currentA: number
  readonly sourceV: number
}

/** What may be wrong with one run. `place` names it where two runs join the same points. */
export function runFaults(run: DrawnRun, place: string, ground: string, { currentA, sourceV }: RunDuty): readonly Fault[] {
  const between = pointText({ red: run.from, black: run.to })
  const carriedA = Math.max(LEAST_A, Math.abs(currentA))
  const grounded = run.to === ground || run.from === ground
  const kind = grounded ? 'bad-ground' : 'high-resistance'
  const named = { at: between, unit: 'ohm' } as const
  return [
    {
      ...named,
      id: `${kind}@${place}`,
      kind,
      says: `${grounded ? 'bad ground' : 'high resistance'}: ${place}`,
      sizes: { by: 'range', low: LEAST_LOSS_V / carriedA, high: (MOST_TIMES * Math.abs(sourceV)) / carriedA },
      sizeSays: 'resistance too much',
      changes: resisting(run.id, (ohm, moreOhm) => ohm + moreOhm)
    },
    {
      ...named,
      id: `open@${place}`,
      kind: 'open',
      says: `open: ${place}${run.through.length > 0 ? ` (${run.through.join(', ')})` : ''}`,
      sizes: { by: 'none' },
      sizeSays: '',
      changes: resisting(run.id, () => OPEN_OHM)
    },
    ...wrongWire(run, place)
  ]
}

function wrongWire({ id, from, to, wire }: DrawnRun, place: string): readonly Fault[] {
  if (wire === null || wire.others.length === 0) return []
  return [
    {
      id: `wrong-wire@${place}`,
      kind: 'wrong-wire',
      at: pointText({ red: from, black: to }),
      says: `wire of another size than ${wire.name}: ${place}`,
      sizes: { by: 'list', of: wire.others.map(({ name, ohmRatio }) => ({ name, size: ohmRatio })) },
      sizeSays: 'resistance against that drawn',
      unit: '',
      changes: resisting(id, (ohm, ohmRatio) => Math.max(0, ohm + wire.wireOhm * (ohmRatio - 1)))
    }
  ]
}
