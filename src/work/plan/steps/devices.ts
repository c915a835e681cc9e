import { showMetricAndInch } from '../../../quantity/show.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { type PlaceRule, PROTECTOR_PLACES } from '../../../trade/circuit/protection-place.ts'
import { type Device, devicesOf } from '../../wiring/devices.ts'
import { ofNumber, written } from '../figure.ts'
import { type StepsOf, step } from '../step.ts'

/** Protection near the source, the switch on the feed side, and what stands on both. */
export const devices: StepsOf = ({ job }) => {
  if (job.circuit === null) return undefined
  const all = devicesOf(job)
  const { open } = PROTECTOR_PLACES[job.job.practice]
  return [
    ...protection(all, open),
    ...all.filter(({ does }) => does === 'switches').map(switching),
    ...all.filter(({ does }) => does !== 'joins').map(label)
  ]
}

function protection(all: readonly Device[], { greatestMm, says, source }: PlaceRule): readonly Step[] {
  const figure =
    greatestMm === null
      ? null
      : written(ofNumber('placeMm', 'wire between source and protector', greatestMm), `≤ ${showMetricAndInch(greatestMm, 'plain')}`)
  const protectors = all.filter(({ does }) => does === 'protects')
  if (protectors.length > 0)
    return protectors.map(({ what, place }) =>
      place === null
        ? step('wire', '', `mount ${what} ${says}`, { figure, source: source.id })
        : step('wire', '', `mount ${what} ${place}`, { caution: 'there and not elsewhere: what it holds was worked out so' })
    )
  return [
    step('wire', '', `mount a fuse or breaker ${says}`, {
      figure,
      source: source.id,
      blank: 'fuse or breaker',
      caution: 'the job names none: settle it before power goes on'
    })
  ]
}

function switching({ what, opensByHeat }: Device): Step {
  // It has to feel what it guards.
  if (opensByHeat && /\b(relay|contacts?)\b/i.test(what))
    return step(
      'wire',
      '',
      `mount ${what} in the feed, not in the return, and the thermostat that works it on the casting, metal to metal`,
      {
        source: 'practice'
      }
    )
  if (opensByHeat)
    return step('wire', '', `mount ${what} on the casting that it is to guard, metal to metal, in the feed, not in the return`, {
      source: 'practice'
    })
  return step('wire', '', `mount ${what} in the feed, not in the return, where it can be reached`, { source: 'cfr-27.1367' })
}

function label({ what, does, mark, label }: Device): Step {
  const rating = does === 'protects' ? ' and its rating' : ''
  return label === null
    ? step('wire', '', `label ${what} with what it feeds${rating}`, { blank: `label on ${mark}` })
    : step('wire', '', `label ${mark}: ${label}`)
}
