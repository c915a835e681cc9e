import { spread, type Tie } from '../circuit/spread.ts'
import { OPEN_OHM } from './fault.ts'
import { isLive, type Probe, type Tested } from './probe.ts'

/** Whether amps are taken where a run that is open leaves no way round, and there is one with every run closed: none flows. */
export function isSwitchedOff({ network: { elements } }: Tested, probe: Probe): boolean {
  if (probe.takes !== 'amps' || !isLive(probe)) return false
  const closed = elements.filter(element => element.kind !== 'resistor' || element.resistanceOhm.value !== OPEN_OHM)
  return !isInLoop(closed, probe) && isInLoop(elements, probe)
}

/** Whether anything but what joins the two leads from the one to the other. */
function isInLoop(ties: readonly Tie[], { red, black }: Probe): boolean {
  const joins = ({ from, to }: Tie) => (from === red && to === black) || (from === black && to === red)
  const others = ties.filter(tie => !joins(tie))
  return others.length < ties.length && spread(red, others).has(black)
}
