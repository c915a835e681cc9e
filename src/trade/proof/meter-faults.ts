import { pointText } from './drawn.ts'
import { type Fault, unchanged } from './fault.ts'
import type { Probe } from './probe.ts'

/** A range misread or a prefix lost, by tens; leads the wrong way round. */
const FACTORS = [
  [0.001, 'thousand times too small: mV for V'],
  [0.01, 'hundred times too small'],
  [0.1, 'ten times too small'],
  [10, 'ten times too large'],
  [100, 'hundred times too large'],
  [1000, 'thousand times too large: V for mV'],
  [-1, 'leads the wrong way round']
] as const
const LEADS = { leastOhm: 0.3, mostOhm: 10 }

/** What may be wrong with how the readings were taken. */
export function meterFaults(readings: readonly Probe[]): readonly Fault[] {
  const misread = readings.map((reading, i) => misreadAt(i, placeOf(reading, i, readings)))
  return readings.some(({ takes }) => takes === 'ohms') ? [...misread, leads] : misread
}

/** Two readings at one place are told apart by their number. */
function placeOf(reading: Probe, i: number, readings: readonly Probe[]): string {
  const place = `${reading.takes} ${pointText(reading)}`
  return readings.filter(one => `${one.takes} ${pointText(one)}` === place).length > 1 ? `${place}, reading ${i + 1}` : place
}

function misreadAt(i: number, place: string): Fault {
  return {
    id: `misread@${place}`,
    kind: 'misread',
    at: place,
    says: `meter on a wrong range or misread: ${place}`,
    sizes: { by: 'list', of: FACTORS.map(([size, name]) => ({ size, name })) },
    sizeSays: 'shown against true',
    unit: '',
    changes: unchanged,
    reading: i,
    shows: (values, factor) => values.map((value, j) => (j === i ? factor * value : value))
  }
}

const leads: Fault = {
  id: 'leads@test leads',
  kind: 'leads',
  at: 'test leads',
  says: 'test leads of high resistance',
  sizes: { by: 'range', low: LEADS.leastOhm, high: LEADS.mostOhm },
  sizeSays: 'resistance too much',
  unit: 'ohm',
  changes: (tested, moreOhm) => ({ ...tested, leadsOhm: tested.leadsOhm + moreOhm })
}
