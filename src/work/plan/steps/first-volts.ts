import { loadName } from '../../../job/circuit-names.ts'
import type { Step } from '../../../report/plan/plan.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { ofBounded, ofResult } from '../figure.ts'
import { type StepsOf, step } from '../step.ts'

/** What the meter should read once power is on. */
export const firstVolts: StepsOf = judged => {
  const { circuit } = judged.job
  if (circuit === null) return undefined
  const { bus, low, high, ground } = circuit.source
  const figure = ofBounded('busV', 'volts at the bus, idle', { value: bus.value, low: low?.low ?? bus.low, high: high?.high ?? bus.high })
  return [
    step('first run', '', `run the machine at idle, and read the bus against ${ground}${between(figure.band)}`, {
      figure,
      blank: figure.name,
      caution: 'heater off first, then on: write both'
    }),
    ...circuit.loads.flatMap(load => atLoad(judged, load)),
    ...groundShifts(judged)
  ]
}

type Load = NonNullable<JudgedJob['job']['circuit']>['loads'][number]

function atLoad({ result }: JudgedJob, { from, to, ...load }: Load): readonly Step[] {
  const name = loadName(load)
  const place = `circuit.${name}`
  const volts = ofResult(result(`${place}:drop.voltage-at-load`), undefined, `volts at ${name}`)
  const amps = ofResult(result(`${place}:drop.current`), undefined, `current of ${name}`)
  if (volts === null || amps === null) return []
  return [
    step('first run', place, `read the volts at ${name}, ${from} to ${to}${between(volts.band)}`, {
      figure: volts,
      blank: volts.name
    }),
    step('first run', place, `read the current of ${name}, once it is hot${between(amps.band)}`, {
      figure: amps,
      caution: 'cold, a heater may draw more for a while',
      blank: amps.name
    })
  ]
}

/** The return point of each load against the 0 V node: what every instrument grounded there is lifted by. */
function groundShifts({ job: { circuit }, points }: JudgedJob): readonly Step[] {
  const ground = circuit?.source.ground
  const returns = circuit?.loads.map(({ to }) => to).filter(name => name !== ground) ?? []
  return (points?.points ?? [])
    .filter(({ name }) => returns.includes(name))
    .map(({ name, pointV }) => {
      const figure = ofBounded('pointV', `ground shift of ${name}`, pointV)
      const says = `read the ground shift, ${name} against ${ground}${between(figure.band)}`
      return step('first run', '', says, { figure, blank: figure.name })
    })
}

function between(band: string): string {
  return band === '' ? '' : `: ${band}`
}
