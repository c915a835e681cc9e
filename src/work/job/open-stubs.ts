import type { Cut } from '../../fitting/circuit-faults.ts'
import { type BareWay, bareWays, placeOf } from '../../trade/circuit/bare-wire.ts'
import { closedRuns } from '../../trade/circuit/closings.ts'
import { liveEnds } from '../../trade/circuit/live-ends.ts'
import { greatestBareMm, PROTECTOR_PLACES } from '../../trade/circuit/protection-place.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { type JobRun, namedRuns } from './circuit-wiring.ts'
import { openRuns } from './guards-in.ts'
import { switchNames } from './position-name.ts'
import { type Piece, plainRun } from './wire-before.ts'

/**
 * Wire without a protector between a source and what is drawn open and closed in no position, as a relay that joins two batteries: all
 * of it, too long for none. Wherever that sits, no protector stands before the wire once it is closed.
 */
export function openStubs({ job, circuit, fit, guards: { wiring, bare }, positions }: CircuitJudged): readonly Cut[] {
  const open = openRuns(fit)
  const runs = namedRuns(circuit)
  const starts = liveEnds(wiring)
  const closed = closedRuns(runs, open).map(plainRun)
  const ways = starts.map(start => bareWays(start, new Set([wiring.ground, ...starts]), closed))
  const places = PROTECTOR_PLACES[job.job.practice]
  return runs.flatMap(({ id, run }) => {
    if (positions.unseen.get(id) !== id) return []
    const whole = plainRun({ id, run })
    return whole.protects === 'yes' ? bare.cuts.filter(cut => cut.run === id && isFed(run[cut.end])) : wholeStubs(whole, run)
  })

  function isFed(point: string): boolean {
    return ways.some(some => some.has(point))
  }

  function wholeStubs(whole: Piece, run: JobRun): readonly Cut[] {
    const names = switchNames(run.through).join(' and ')
    return (['from', 'to'] as const).flatMap(end => {
      const point = run[end]
      const led = ways.flatMap(some => some.get(point) ?? [])
      if (run.wire === null || !led.some(way => isTooLong(way, whole))) return []
      return [{ run: whole.id, end, share: 1, piece: `${whole.id} (${point} to ${names})`, point: `${names} at its ${point} side` }]
    })
  }

  function isTooLong({ lengthMm, sheathed }: BareWay<Piece>, whole: Piece): boolean {
    const way = { lengthMm: lengthMm + whole.lengthMm, sheathed: sheathed === 'yes' ? whole.sheathed : 'no' } as const
    return way.lengthMm > greatestBareMm(placeOf(way, places))
  }
}
