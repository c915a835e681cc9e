import type { Diagnostic } from '../quantity/diagnostic.ts'
import { tooMuch } from '../rules/drop/too-much.ts'
import type { Finding } from '../rules/finding.ts'
import { doubted } from '../rules/judge.ts'
import { dropLimit, PRACTICES } from '../rules/practice/practice.ts'
import { asked } from '../rules/rule.ts'
import { overAmpacity } from '../rules/wire/over-ampacity.ts'
import { shortCircuit } from '../rules/wire/short-circuit.ts'
import { tooSmall } from '../rules/wire/too-small.ts'
import { AS_SOLID, type ConductorKind } from '../trade/circuit/conductor.ts'
import type { FedLoad } from '../trade/circuit/drop.ts'
import { wire as calculation } from '../trade/circuit/wire.ts'
import { assumedOf, figureOf, noWire, type WireOffer, type WireWish, wireOffers } from '../trade/circuit/wire-choice.ts'
import { offersTable, wireCautions, wireResults } from '../work/results/wire-results.ts'
import type { Run } from './describe.ts'
import { quickSum } from './quick-sum.ts'
import { readLimit } from './read-limit.ts'
import { refusal, refused } from './refusal.ts'
import { sum } from './sum.ts'
import { wire as description } from './wire.ts'
import type { Words } from './words.ts'

const readers = { limit: readLimit }
type WireWords = Words<typeof description.rows, typeof readers>

export const run: Run = quickSum(description, readers, words => {
  const load = loadOf(words)
  if (refused(load)) return load
  const standard = words.standard ?? (words.practice === 'aircraft' ? 'awg' : 'mm2')
  const wish = wishOf(words, load, kindOf(words.practice, standard))
  const offers = wireOffers(wish)
  const chosen = offers.find(({ rejected }) => rejected.length === 0)
  return sum({
    title: `smallest ${wish.kind} conductor, ${words.practice} practice`,
    tree: () => {
      if (chosen === undefined) throw noWire(offers)
      return chosen.given
    },
    calculation,
    taken: words.standard === null ? { standard: { value: standard, why: 'usual for this practice' } } : {},
    results: wireResults(chosen?.conductor.size.name ?? null),
    tried: { candidates: offersTable(offers, chosen) },
    findings: r => findingsOf(chosen!, r, wish.limit),
    cautions: () => cautionsOf(words, wish, chosen!)
  })
})

function loadOf({ current, power, voltage, bus }: WireWords): FedLoad | readonly Diagnostic[] {
  if ((current === null) === (power === null))
    return refusal('--current', current === null ? 'neither --current nor --power' : '--current beside --power', 'one of the two')
  if (current !== null) return { takes: 'current', currentA: current, busV: bus }
  return voltage === null
    ? refusal('--voltage', '--power without --voltage', 'the rated voltage as well')
    : { takes: 'constant-resistance', powerW: power!, ratedV: voltage, busV: bus }
}

function kindOf(practice: WireWords['practice'], standard: 'awg' | 'mm2'): ConductorKind {
  if (standard === 'mm2') return 'class-5'
  return practice === 'aircraft' ? 'aircraft' : 'solid'
}

function wishOf(words: WireWords, load: FedLoad, kind: ConductorKind): WireWish {
  const { practice, length, bus, insulation, ambient, altitude, bundle, limit, duty } = words
  return {
    practice,
    kind,
    lengthM: length,
    busV: bus,
    load,
    insulationC: insulation,
    ambientC: ambient,
    altitudeM: altitude,
    bundleCount: bundle,
    limit: limit ?? dropLimit(practice, bus.value, duty) ?? null
  }
}

type Found = NonNullable<WireOffer['bounds']>

function findingsOf({ conductor, given, smallest }: WireOffer, r: Found, limit: WireWish['limit']) {
  const figure = figureOf(given)
  const holds = figure.kind === 'ampacity' ? figure.holdsFor : figure.says
  const source = figure.kind === 'ampacity' ? figure.source : tooSmall.source
  const protector = given.protector === null ? 'no protector' : `a blade fuse of ${given.protector.ratingA.value} A`
  return [
    asked(overAmpacity, { ...r, holds, figureSource: source, assumed: assumedOf(given) }),
    asSolid(conductor.kind, asked(tooMuch, { dropV: r.warmDropV, dropPercent: r.warmDropPercent, limit, limitBy: '--limit' })),
    asked(tooSmall, { size: conductor.size.name, smallest }),
    asked(shortCircuit, { short: r.short, protector })
  ]
}

/** Nobody told how the gauge is made up: at best a caution. */
function asSolid(kind: ConductorKind, finding: Finding): Finding {
  const sure = kind !== 'solid' || finding.verdict !== 'pass'
  return doubted(finding, sure ? [] : [`hangs on what was assumed: ${AS_SOLID}`])
}

function cautionsOf({ practice, limit }: WireWords, wish: WireWish, { given }: WireOffer): readonly string[] {
  const looser = limit === null ? PRACTICES[practice].looser : undefined
  return [
    ...wireCautions(given),
    ...(wish.kind === 'solid' ? [`the wire is taken as ${AS_SOLID}`] : []),
    ...(looser === undefined ? [] : [`${looser.says}: for such a circuit give --limit "${looser.percent} %"`])
  ]
}
