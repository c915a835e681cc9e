import type { Step } from '../../../report/plan/plan.ts'
import { everywhere } from '../../job/judged-job.ts'
import { ofNumber, ofResult } from '../figure.ts'
import { type StepsOf, step } from '../step.ts'

/** Heat where it belongs, and nowhere else; what heat does to a joint. */
export const firstWarmth: StepsOf = judged => [
  ...steady(judged),
  ...cutOff(judged),
  ...(judged.job.circuit === null
    ? []
    : [step('first run', '', 'feel every joint, the fuse and the switch: none is warmer than the wire beside it')]),
  ...judged.holes.filter(({ part }) => part.kind === 'heater').map(temperature),
  step('first run', '', 'after the first heat cycles, cold again, check torque and marks as far as the maker allows', {
    caution: 'where the maker says nothing, ask: pulling again may be worse than leaving it',
    blank: 'torque after heat cycles'
  })
]

function steady(judged: Parameters<StepsOf>[0]): readonly Step[] {
  return everywhere(judged, 'warm.steady').flatMap(result => {
    const figure = ofResult(result)
    return figure === null
      ? []
      : [step('first run', '', 'look for the casting to settle near this: an estimate of the metal, not of what flows past it', { figure })]
  })
}

/** A thermostat that has never opened is a hope. */
function cutOff({ job: { warm } }: Parameters<StepsOf>[0]): readonly Step[] {
  if (warm?.thermostat == null) return []
  return [
    step('first run', '', 'stay beside it until the thermostat has opened, at this metal or below, and has closed again: write both', {
      figure: ofNumber('thermostatC', 'thermostat opens at', warm.thermostat.off.high),
      blank: 'thermostat opens, closes',
      caution: 'hotter, and it has not opened: switch off, nothing else takes the power away'
    })
  ]
}

function temperature({ name, place }: Parameters<StepsOf>[0]['holes'][number]): Step {
  return step('first run', place, `take the temperature of the casting beside ${name} every two minutes until it settles`, {
    blank: `temperature beside ${name}`
  })
}
