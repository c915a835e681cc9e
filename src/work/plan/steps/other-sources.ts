import type { Step } from '../../../report/plan/plan.ts'
import { BUS, type JobCircuit } from '../../job/circuit-wiring.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { step } from '../step.ts'
import { waysOf } from './source-ways.ts'

type Source = JobCircuit['other-sources'][number]

/** One source, and the 0 V node. */
interface Wired {
  readonly source: Source
  readonly ground: string
}

/** Before the ground lead of the battery: what gives power as long as it is plugged in, lit or driven gives none. */
export function stopped(judged: JudgedJob): readonly Step[] {
  return wiredIn(judged).flatMap(({ source: { what } }) =>
    waysOf(what).flatMap(({ stop, caution }) => (stop === null ? [] : [step('make ready', '', stop(what), { caution })]))
  )
}

/** After it: a lead of every other source off, and nothing is left to read. */
export function takenOff(judged: JudgedJob): readonly Step[] {
  const wired = wiredIn(judged)
  const off = leadsOf(wired).map(({ lead, caution }) => step('make ready', '', `take ${lead} off`, { caution }))
  return wired.length === 0 ? [] : [...off, nothingLeft(wired)]
}

/** Before the ground lead of the battery: the leads of the others, in the opposite order. */
export function putBack(judged: JudgedJob): readonly Step[] {
  return leadsOf(wiredIn(judged))
    .toReversed()
    .map(({ lead }) => step('close', '', `put ${lead} back on`))
}

/** Once every lead is on. */
export function startedAgain(judged: JudgedJob): readonly Step[] {
  return wiredIn(judged)
    .toReversed()
    .flatMap(({ source: { what } }) =>
      waysOf(what)
        .toReversed()
        .flatMap(({ start }) => (start === null ? [] : [step('close', '', start(what))]))
    )
}

export function hasOthers(judged: JudgedJob): boolean {
  return wiredIn(judged).length > 0
}

function wiredIn({ job: { circuit } }: JudgedJob): readonly Wired[] {
  return circuit === null ? [] : circuit['other-sources'].map(source => ({ source, ground: circuit.source.ground }))
}

/** The lead of each in the order they come off: from a post that is not grounded, a spanner to the frame is a short as long as a ground lead is on. */
function leadsOf(wired: readonly Wired[]): readonly { readonly lead: string; readonly caution: string }[] {
  const leads = wired.flatMap(one => {
    const ways = waysOf(one.source.what)
    const found = ways.find(({ lead }) => lead === 'minus') ?? ways.find(({ lead }) => lead === 'plus')
    return found === undefined ? [] : [{ caution: found.caution, ...(found.lead === 'minus' ? minusLead(one) : plusLead(one)) }]
  })
  return leads.sort((a, b) => a.turn - b.turn)
}

interface Lead {
  readonly lead: string
  readonly turn: number
}

/** Of a battery between two others no end is grounded. */
function minusLead({ source: { what, from, to }, ground }: Wired): Lead {
  return [from, to].includes(ground)
    ? { lead: `the ground lead of the ${what}, at ${ground},`, turn: 0 }
    : { lead: `the minus lead of the ${what}, at ${from},`, turn: 1 }
}

function plusLead({ source: { what, from, to }, ground }: Wired): Lead {
  return { lead: `the lead of the ${what}, at ${to === ground ? from : to},`, turn: 2 }
}

/** Whatever a source is called, this finds the one that still feeds. */
function nothingLeft(wired: readonly Wired[]): Step {
  const { ground } = wired[0]!
  const points = new Set([BUS, ...wired.flatMap(({ source: { from, to } }) => [from, to])])
  const live = [...points].filter(point => point !== ground)
  return step('make ready', '', `read the volts of ${live.join(', ')} against ${ground}: nothing is left`, {
    caution: 'anything left: something feeds it still; no tool and no wire goes near before it is found and off',
    blank: 'volts with every source off'
  })
}
