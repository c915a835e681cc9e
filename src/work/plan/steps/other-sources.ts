import type { Part, Step } from '../../../report/plan/plan.ts'
import { BUS, type JobCircuit } from '../../job/circuit-wiring.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { step } from '../step.ts'

type Source = JobCircuit['other-sources'][number]
type Kind = 'charger' | 'panel' | 'battery' | 'driven' | 'unknown'

/** What a source is, by the words of its name: the first that fits. One whose words tell nothing has its lead taken off. */
const KINDS: readonly (readonly [Kind, RegExp])[] = [
  ['charger', /charger|\bshore|\bmains\b|\bplug|adapt[eo]r/i],
  ['panel', /\bsolar\b|\bpanels?\b|photovoltaic|\bpv\b/i],
  ['battery', /batter(y|ies)\b|accumulator|capacitor|\b(bank|pack|cells?)\b/i],
  ['driven', /alternator|dynamo|generator|magneto/i]
]

/** One source, and the 0 V node. */
interface Wired {
  readonly source: Source
  readonly ground: string
}

/** How a kind is made dead before any lead is off, which lead then comes off, and the other way round; null where there is nothing to do. */
interface Ways {
  readonly stop: ((name: string) => string) | null
  readonly start: ((name: string) => string) | null
  readonly lead: ((wired: Wired) => string) | null
  readonly caution: string
}

const WAYS: { readonly [kind in Kind]: Ways } = {
  charger: {
    stop: name => `unplug the ${name} where it gets its power, before any lead of a battery is off`,
    start: name => `plug the ${name} in again, with every lead on`,
    lead: null,
    caution: 'a tag on the plug: nobody puts it back before the work is done'
  },
  panel: {
    stop: name => `cover the ${name}, so that no light falls on it`,
    start: name => `uncover the ${name}, with every lead on`,
    lead: plusLead,
    caution: 'where its maker gives an order for panel, controller and battery, that order'
  },
  battery: { stop: null, start: null, lead: minusLead, caution: 'where the maker gives an order for the batteries, that order' },
  driven: {
    stop: name => `see that what drives the ${name} stands still, and that nobody can start it`,
    start: name => `free what drives the ${name} again`,
    lead: null,
    caution: 'key out, a tag on its start'
  },
  unknown: { stop: null, start: null, lead: plusLead, caution: 'its maker tells how it is switched off: so first' }
}

/** Before the ground lead of the battery: what gives power as long as it is plugged in, lit or driven gives none. */
export function stopped(judged: JudgedJob): readonly Step[] {
  return wiredIn(judged).flatMap(({ source: { what } }) => told('make ready', WAYS[kindOf(what)], one => one.stop?.(what)))
}

/** After it: a lead of every other source off, and nothing is left to read. */
export function takenOff(judged: JudgedJob): readonly Step[] {
  const wired = wiredIn(judged)
  const off = wired.flatMap(one => told('make ready', WAYS[kindOf(one.source.what)], ({ lead }) => withLead('take', lead?.(one), 'off')))
  return wired.length === 0 ? [] : [...off, nothingLeft(wired)]
}

/** Before the ground lead of the battery: the leads of the others, in the opposite order. */
export function putBack(judged: JudgedJob): readonly Step[] {
  return wiredIn(judged)
    .toReversed()
    .flatMap(one => plain(withLead('put', WAYS[kindOf(one.source.what)].lead?.(one), 'back on')))
}

/** Once every lead is on. */
export function startedAgain(judged: JudgedJob): readonly Step[] {
  return wiredIn(judged)
    .toReversed()
    .flatMap(({ source: { what } }) => plain(WAYS[kindOf(what)].start?.(what)))
}

export function hasOthers(judged: JudgedJob): boolean {
  return wiredIn(judged).length > 0
}

function wiredIn({ job: { circuit } }: JudgedJob): readonly Wired[] {
  return circuit === null ? [] : circuit['other-sources'].map(source => ({ source, ground: circuit.source.ground }))
}

function kindOf(what: string): Kind {
  return KINDS.find(([, words]) => words.test(what))?.[0] ?? 'unknown'
}

function told(part: Part, ways: Ways, of: (ways: Ways) => string | undefined): readonly Step[] {
  const says = of(ways)
  return says === undefined ? [] : [step(part, '', says, { caution: ways.caution })]
}

function plain(says: string | undefined): readonly Step[] {
  return says === undefined ? [] : [step('close', '', says)]
}

function withLead(verb: string, lead: string | undefined, where: string): string | undefined {
  return lead === undefined ? undefined : `${verb} ${lead} ${where}`
}

/** Of a battery between two others no end is grounded. */
function minusLead({ source: { what, from, to }, ground }: Wired): string {
  return [from, to].includes(ground) ? `the ground lead of the ${what}, at ${ground},` : `the minus lead of the ${what}, at ${from},`
}

function plusLead({ source: { what, from, to }, ground }: Wired): string {
  return `the lead of the ${what}, at ${to === ground ? from : to},`
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
