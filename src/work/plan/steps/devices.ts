import type { Step } from '../../../report/plan/plan.ts'
import { type Device, devicesOf } from '../../wiring/devices.ts'
import { type StepsOf, step } from '../step.ts'

/** Protection near the source, the switch on the feed side, and what stands on both. */
export const devices: StepsOf = ({ job }) => {
  const all = devicesOf(job)
  if (job.circuit === null) return undefined
  return [
    ...protection(all),
    ...all.filter(({ does }) => does === 'switches').map(switching),
    ...all.filter(({ does }) => does !== 'joins').map(label)
  ]
}

function protection(all: readonly Device[]): readonly Step[] {
  const protecting = all.filter(({ does }) => does === 'protects')
  const where = 'as near the source as it will go: the wire before it has nothing to protect it'
  if (protecting.length === 0)
    return [
      step('wire', '', `fuse or breaker ${where}`, {
        blank: 'fuse or breaker',
        caution: 'the job names none: settle it before power goes on'
      })
    ]
  return protecting.map(({ what }) => step('wire', '', `${what} ${where}`, { source: 'cfr-27.1357' }))
}

function switching({ what }: Device): Step {
  return step('wire', '', `${what} in the feed, not in the return, where it can be reached`, { source: 'cfr-27.1367' })
}

function label({ what, does, mark, label }: Device): Step {
  const rating = does === 'protects' ? ' and its rating' : ''
  return label === null
    ? step('wire', '', `label ${what} with what it feeds${rating}`, { blank: `label on ${mark}` })
    : step('wire', '', `label ${mark}: ${label}`)
}
