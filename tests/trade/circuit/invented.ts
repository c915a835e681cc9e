import { Given } from '../../../src/formula/given.ts'
import { type Conductor, type ConductorKind, conductorOf } from '../../../src/trade/circuit/conductor.ts'
import type { Drop } from '../../../src/trade/circuit/drop.ts'
import type { PlainElement } from '../../../src/trade/circuit/network.ts'
import { readWire } from '../../../src/trade/circuit/wire-size.ts'

/** A run as a line between two points. */
export function run(id: string, from: string, to: string, protects: 'yes' | 'no' = 'no') {
  return { id, from, to, protects }
}

export function ohm(id: string, from: string, to: string, resistanceOhm: number): PlainElement {
  return { kind: 'resistor', id, from, to, resistanceOhm }
}

export function wire(size: string, kind: ConductorKind): Conductor {
  const read = readWire(size)
  if (!read.ok) throw new Error(read.fault.found)
  const found = conductorOf({ size: read.value, kind })
  if (!found.ok) throw new Error(found.fault.found)
  return found.value
}

/** Filter-head heater of a 24 V truck, invented: 72 W at 24 V, 7.5 m there and back, wire at 50 °C, joints 0.020 ohm, bus 27.0 V. */
export function truck(size: string): Drop {
  const lengthM = new Given(7.5)
  return {
    conductor: wire(size, 'class-5'),
    lengthM,
    back: { by: 'wire', returnM: lengthM },
    conductorC: new Given(50),
    jointsOhm: new Given(0.02),
    load: { takes: 'constant-resistance', powerW: new Given(72), ratedV: new Given(24), busV: new Given(27) }
  }
}

/** The same truck with the slack such figures have; invented. */
export function looseTruck(size: string): Drop {
  const lengthM = new Given(7.5, { low: 7.2, high: 7.9 })
  return {
    ...truck(size),
    lengthM,
    back: { by: 'wire', returnM: lengthM },
    conductorC: new Given(50, { low: 20, high: 70 }),
    jointsOhm: new Given(0.02, { low: 0.005, high: 0.05 }),
    load: {
      takes: 'constant-resistance',
      powerW: new Given(72, { low: 64.8, high: 75.6 }),
      ratedV: new Given(24),
      busV: new Given(27, { low: 24.5, high: 28.4 })
    }
  }
}
