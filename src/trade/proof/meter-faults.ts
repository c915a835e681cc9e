import { pointText } from './drawn.ts'
import { type Fault, unchanged } from './fault.ts'
import type { Probe } from './probe.ts'
import type { Takes } from './reading-unit.ts'

/** What is told for what where a prefix is lost. */
const LOST = {
  volts: { small: 'mV for V', large: 'V for mV' },
  amps: { small: 'mA for A', large: 'A for mA' },
  ohms: { small: 'ohm for kohm', large: 'kohm for ohm' }
} as const satisfies { readonly [T in Takes]: object }

/** A range misread or a prefix lost, by tens; leads the wrong way round. */
const FACTORS = [
  [0.001, 'thousand times too small', 'small'],
  [0.01, 'hundred times too small', null],
  [0.1, 'ten times too small', null],
  [10, 'ten times too large', null],
  [100, 'hundred times too large', null],
  [1000, 'thousand times too large', 'large'],
  [-1, 'leads the wrong way round', null]
] as const
const LEADS = { leastOhm: 0.3, mostOhm: 10 }

/** What may be wrong with how the readings were taken. */
export function meterFaults(readings: readonly Probe[]): readonly Fault[] {
  const misread = readings.map((reading, i) => misreadAt(i, reading.takes, placeOf(reading, i, readings)))
  return readings.some(({ takes }) => takes === 'ohms') ? [...misread, leads] : misread
}

/** Two readings at one place are told apart by their number. */
function placeOf(reading: Probe, i: number, readings: readonly Probe[]): string {
  const place = `${reading.takes} ${pointText(reading)}`
  return readings.filter(one => `${one.takes} ${pointText(one)}` === place).length > 1 ? `${place}, reading ${i + 1}` : place
}

function misreadAt(i: number, takes: Takes, place: string): Fault {
  return {
    id: `misread@${place}`,
    kind: 'misread',
    at: place,
    says: `meter on a wrong range or misread: ${place}`,
    sizes: {
      by: 'list',
      of: FACTORS.map(([size, name, lost]) => ({ size, name: lost === null ? name : `${name}: ${LOST[takes][lost]}` }))
    },
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
