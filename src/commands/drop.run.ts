import { Given } from '../formula/given.ts'
import type { Diagnostic } from '../quantity/diagnostic.ts'
import { tooMuch } from '../rules/drop/too-much.ts'
import type { Finding } from '../rules/finding.ts'
import type { Limit } from '../rules/judge.ts'
import { doubted } from '../rules/judge.ts'
import { dropLimit, PRACTICES } from '../rules/practice/practice.ts'
import { asked } from '../rules/rule.ts'
import { ampacity } from '../trade/circuit/ampacity.ts'
import { conductorBySize } from '../trade/circuit/ampacity-conductor.ts'
import { AS_SOLID, conductorOf, usualKind } from '../trade/circuit/conductor.ts'
import { lowerRoot } from '../trade/circuit/constant-power.ts'
import { drop as calculation, type FedLoad, type WayBack } from '../trade/circuit/drop.ts'
import { threeDigits } from '../trade/circuit/three-digits.ts'
import { readWire } from '../trade/circuit/wire-size.ts'
import { DROP_RESULTS } from '../work/results/drop-results.ts'
import type { Run } from './describe.ts'
import { drop as description } from './drop.ts'
import { likewise } from './likewise.ts'
import { quickSum } from './quick-sum.ts'
import { readLimit } from './read-limit.ts'
import { refusal, refusalOf, refused } from './refusal.ts'
import { sum, type Taken } from './sum.ts'
import type { Words } from './words.ts'

const readers = { wire: readWire, limit: readLimit }

export const run: Run = quickSum(description, readers, words => {
  const load = loadOf(words)
  if (refused(load)) return load
  const back = backOf(words)
  if (refused(back)) return back
  const kind = words.conductor ?? usualKind(words.wire, words.practice ?? undefined)
  const conductor = conductorOf({ size: words.wire, kind })
  if (!conductor.ok) return refusalOf('--conductor', conductor.fault)
  const limit = limitOf(words)
  return sum({
    title: `${words.wire.name} ${kind}, return by ${words.return}`,
    tree: () => ({
      conductor: conductor.value,
      lengthM: words.length,
      back,
      conductorC: words.temperature,
      jointsOhm: jointsOf(words),
      load
    }),
    calculation,
    taken: takenOf(words, kind),
    results: DROP_RESULTS,
    findings: r =>
      words.limit === null && words.practice === null
        ? []
        : [hanging(words, kind, asked(tooMuch, { dropV: r.dropV, dropPercent: r.dropPercent, limit, limitBy: '--limit' }))],
    cautions: r => [...cautionsOf(words, kind, r.loadW?.high), ...tooHotOf(words, r.currentA.high), ...lowerOf(load, r.loopOhm.value)]
  })
})

type DropWords = Words<typeof description.rows, typeof readers>
type Refusal = readonly Diagnostic[]

/** The way back and the make-up of a gauge that nobody gave are assumed, and so allow at best a caution. */
function hanging({ return: by, 'return-length': back, conductor }: DropWords, kind: string, finding: Finding): Finding {
  const assumed = [
    ...(by === 'wire' && back === null ? ['return-length (the length of the feed)'] : []),
    ...(kind === 'solid' && conductor === null ? [`conductor (${AS_SOLID})`] : [])
  ]
  return doubted(finding, assumed.length === 0 ? [] : [`hangs on what was assumed: ${assumed.join(', ')}`])
}

function loadOf({ current, power, voltage, bus, 'constant-power': constant }: DropWords): FedLoad | Refusal {
  if ((current === null) === (power === null))
    return refusal('--current', current === null ? 'neither --current nor --power' : '--current beside --power', 'one of the two')
  const busV = bus ?? (voltage === null ? null : likewise(voltage, 'bus', 'the rated voltage'))
  if (current !== null)
    return constant
      ? refusal('--constant-power', '--constant-power with --current', '--power')
      : { takes: 'current', currentA: current, busV: busV ?? undefined }
  if (power === null || busV === null) return refusal('--voltage', '--power without --voltage', 'the rated voltage as well')
  if (constant) return { takes: 'constant-power', powerW: power, busV }
  return voltage === null
    ? refusal('--voltage', '--power without --voltage', 'the rated voltage as well')
    : { takes: 'constant-resistance', powerW: power, ratedV: voltage, busV }
}

function backOf({ return: by, 'return-length': returnM, length }: DropWords): WayBack | Refusal {
  if (by === 'wire') return { by, returnM: returnM ?? length }
  return returnM === null
    ? { by }
    : refusal('--return-length', '--return-length with a return by structure', 'the resistance of the structure within --connections')
}

/** Nobody told of any resistance on a way back through the structure: that it has none is assumed too. */
function jointsOf({ return: by, connections }: DropWords): Given {
  const { assumed, value, at } = connections
  return by === 'wire' || assumed === undefined ? connections : new Given(value, { assumed: `default: ${BARE_STRUCTURE}`, at })
}

const BARE_STRUCTURE = 'perfect joints, and a structure without resistance'

function takenOf(words: DropWords, kind: string): Taken {
  const { bus, voltage, 'return-length': back, return: by, length, conductor, connections } = words
  return {
    ...(by === 'structure' && connections.assumed !== undefined ? { connections: { value: connections, why: BARE_STRUCTURE } } : {}),
    ...(bus === null && voltage !== null ? { bus: { value: voltage, why: 'the rated voltage' } } : {}),
    ...(back === null && by === 'wire' ? { 'return-length': { value: length, why: 'the length of the feed' } } : {}),
    ...(conductor === null ? { conductor: { value: kind, why: 'usual for this size' } } : {})
  }
}

/** What the user gives goes before what the practice says. */
function limitOf({ limit, practice, bus, voltage, duty }: DropWords): (Limit & { readonly unit: '%' | 'V' }) | null {
  if (limit !== null || practice === null) return limit
  return dropLimit(practice, (bus ?? voltage)?.value ?? 0, duty) ?? null
}

function cautionsOf(
  { power, practice, limit, conductor, return: by, connections }: DropWords,
  kind: string,
  loadW: number | undefined
): readonly string[] {
  const judged = practice !== null || limit !== null
  const looser = practice === null || limit !== null ? undefined : PRACTICES[practice].looser
  return [
    ...(kind === 'solid' && conductor === null && judged ? [`the wire is taken as ${AS_SOLID}; give --conductor`] : []),
    ...(power !== null && loadW !== undefined && loadW > power.high * 1.0001
      ? ['the load gets more than its rated power, since the bus stands above its rated voltage']
      : []),
    ...(by === 'structure' && connections.assumed === undefined ? ['the structure is taken to lie within --connections'] : []),
    ...(looser === undefined ? [] : [`${looser.says}: for such a circuit give --limit "${looser.percent} %"`])
  ]
}

/** The drop alone says nothing of how warm a wire gets: one that would burn even where it lies best is told. */
function tooHotOf({ wire, practice }: DropWords, currentA: number): readonly string[] {
  const lying = { insulationC: 105, ambientC: 30, altitudeM: 0, bundleCount: 1 }
  const carries = ampacity({ practice: practice ?? 'general', conductor: conductorBySize(wire), ...lying })
  if (carries.kind === 'no figure') return [`how warm the wire gets is not known: ${carries.says}`]
  if (currentA <= carries.reachA) return []
  return [
    `too much for this wire, whatever it drops: ${threeDigits(currentA)} A, where ${wire.name} of 105 °C insulation lying by itself at 30 °C carries ${threeDigits(carries.reachA)} A for good; choose one with \`fettle wire\``
  ]
}

/** A load of constant power fits at a second voltage too. It is told, so that nobody takes it for a fault of the sum. */
function lowerOf(load: FedLoad, loopOhm: number): readonly string[] {
  if (load.takes !== 'constant-power') return []
  const root = lowerRoot({ busV: load.busV.value, loopOhm, powerW: load.powerW.value })
  if (root === undefined) return []
  return [
    `${threeDigits(root.lowerV)} V with ${threeDigits(root.lowerA)} A would fit as well: no load stays there, but one that is switched on slowly may hang at it and heat the wire`
  ]
}
