import { loadName } from '../../../job/circuit-names.ts'
import type { Job } from '../../../job/read-job.ts'
import type { Step } from '../../../report/plan/plan.ts'
import type { Opened } from '../../../trade/circuit/closings.ts'
import type { Probe } from '../../../trade/proof/probe.ts'
import { READING_UNIT } from '../../../trade/proof/reading-unit.ts'
import { openRuns } from '../../job/guards-in.ts'
import { onFitOf } from '../../job/on-fit-of.ts'
import { expectedReadings } from '../../prove/expected-readings.ts'
import { returnsOf } from '../../prove/returns-of.ts'
import { everythingOn, switchedOn } from '../../prove/switched-on.ts'
import { ofReading } from '../figure.ts'
import { type StepsOf, step } from '../step.ts'

type Circuit = NonNullable<Job['circuit']>

/** One reading: where the meter goes, what is read in words, and what that is called in its blank. */
interface FirstReading extends Probe {
  readonly place?: string
  readonly says: string
  readonly name: string
  readonly caution?: string
}

/** What the meter should read once power is on, in the band in which `prove` takes it. */
export const firstVolts: StepsOf = ({ job, points }) => {
  const { circuit } = job
  if (circuit === null || points === null) return undefined
  const open = openRuns(onFitOf(job, circuit))
  const readings = [atBus(circuit, open), ...circuit.loads.flatMap(atLoad), ...groundShifts(circuit, open)]
  const bands = expectedReadings(job, circuit, readings)
  return readings.map((reading, i) => readingStep(reading, bands[i]!))
}

function readingStep({ takes, place = '', says, name, caution }: FirstReading, band: Parameters<typeof ofReading>[1]): Step {
  const figure = ofReading(name, band, READING_UNIT[takes])
  return step('first run', place, `${says}: ${figure.band}`, { figure, blank: name, ...(caution === undefined ? {} : { caution }) })
}

function atBus(circuit: Circuit, open: Opened): FirstReading {
  const { ground } = circuit.source
  const on = switchedOn(circuit, open)
  return {
    ...live('volts', 'bus', ground),
    says: `run the machine at idle, and read the bus against ${ground}`,
    name: 'volts at the bus, idle',
    caution: `heater off first, then on: write both${on.off.length === 0 ? '' : `; this and every reading after it with ${everythingOn(on)}`}`
  }
}

function atLoad({ from, to, ...load }: Circuit['loads'][number]): readonly FirstReading[] {
  const name = loadName(load)
  const place = `circuit.${name}`
  return [
    { ...live('volts', from, to), place, says: `read the volts at ${name}, ${from} to ${to}`, name: `volts at ${name}` },
    {
      ...live('amps', from, to),
      place,
      says: `read the current of ${name}, once it is hot`,
      name: `current of ${name}`,
      caution: 'cold, a heater may draw more for a while'
    }
  ]
}

/** The return point of each load against the 0 V node: what every instrument grounded there is lifted by. */
function groundShifts(circuit: Circuit, open: Opened): readonly FirstReading[] {
  const { ground } = circuit.source
  return returnsOf(circuit, open).map(name => ({
    ...live('volts', name, ground),
    says: `read the ground shift, ${name} against ${ground}`,
    name: `ground shift of ${name}`
  }))
}

function live(takes: 'volts' | 'amps', red: string, black: string): Probe {
  return { takes, red, black, passingA: null }
}
