import type { Given } from '../../../formula/given.ts'
import { showNumber } from '../../../quantity/show.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { thermostatNotWired } from '../../../rules/warm/thermostat-not-wired.ts'
import { everywhere } from '../../job/judged-job.ts'
import { ofNumber, ofResult } from '../figure.ts'
import { type StepsOf, step } from '../step.ts'

type Judged = Parameters<StepsOf>[0]

/** Heat where it belongs, and nowhere else; what heat does to a joint. */
export const firstWarmth: StepsOf = judged => [
  ...steady(judged),
  ...cutOff(judged),
  ...(judged.job.circuit === null
    ? []
    : [step('first run', '', 'feel every joint, the fuse and the switch: none is warmer than the wire beside it')]),
  ...judged.holes.filter(({ part }) => part.kind === 'heater').map(hole => temperature(hole, wiredOff(judged) !== null)),
  step('first run', '', 'after the first heat cycles, cold again, check torque and marks as far as the maker allows', {
    caution: 'where the maker says nothing, ask: pulling again may be worse than leaving it',
    blank: 'torque after heat cycles'
  })
]

/** Where a thermostat takes the power off before, that is what the metal is held near. */
function steady(judged: Judged): readonly Step[] {
  const off = wiredOff(judged)
  return everywhere(judged, 'warm.steady').flatMap(result => {
    const figure = ofResult(result)
    if (figure === null) return []
    const opens = off !== null && (figure.high ?? figure.value) > off.low
    return opens
      ? [heldNear(off, (figure.low ?? figure.value) > off.high)]
      : [step('first run', '', `${inAir(judged)}look for the casting to settle near this: ${ESTIMATE}`, { figure, caution: HOTTER })]
  })
}

const ESTIMATE = 'an estimate of the metal, not of what flows past it'
const HOTTER = 'in warmer or stiller air, as in a shop, it settles hotter'

/** The figure is that of the coldest air the job tells of. */
function inAir({ job: { surroundings } }: Judged): string {
  return surroundings === null ? '' : `in moving air of ${showNumber(surroundings.air.value, 'temperature')} °C `
}

function heldNear(off: Given, surely: boolean): Step {
  const settles = surely ? '' : ', or to settle below'
  return step('first run', '', `look for the casting to get no warmer than this, where its thermostat opens at the latest${settles}`, {
    figure: ofNumber('thermostatC', 'thermostat opens at', off.high)
  })
}

/** Null where there is none, or the one there is in no wire of a heater. */
function wiredOff({ job: { warm }, answer }: Judged): Given | null {
  const unwired = answer.findings.some(({ rule, verdict }) => rule === thermostatNotWired.id && verdict === 'fail')
  return warm === null || warm.thermostat === null || unwired ? null : warm.thermostat.off
}

/** A thermostat that has never opened is a hope. */
function cutOff({ job: { warm } }: Judged): readonly Step[] {
  if (warm?.thermostat == null) return []
  return [
    step('first run', '', 'stay beside it until the thermostat has opened, at this metal or below, and has closed again: write both', {
      figure: ofNumber('thermostatC', 'thermostat opens at', warm.thermostat.off.high),
      blank: 'thermostat opens, closes',
      caution: 'hotter, and it has not opened: switch off, nothing else takes the power away'
    })
  ]
}

function temperature({ name, place }: Judged['holes'][number], cycles: boolean): Step {
  const end = cycles ? 'it settles, or its thermostat has opened and closed twice' : 'it settles'
  return step('first run', place, `take the temperature of the casting beside ${name} every two minutes until ${end}`, {
    blank: `temperature beside ${name}`
  })
}
