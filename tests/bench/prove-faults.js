// Seeded faults put into the circuits of the examples, readings drawn with meter error, and what `prove` makes of them. Never a test.
// node tests/bench/prove-faults.js [faults] [seed]
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { bundled } from './bundled.js'

const FAULTS = Number(process.argv[2] ?? 400)
const SEED = Number(process.argv[3] ?? 20260501)
const HEALTHY_CASES = Math.round(FAULTS / 2)
const FOLLOWED = Math.round(FAULTS / 4)

const folder = mkdtempSync(join(tmpdir(), 'fettle-bench-'))
const bundle = join(folder, 'prove-faults.mjs')
await bundled(
  `
      export { readJob } from './job/read-job.ts'
      export { benchNamed } from './job/bench-name.ts'
      export { pointsOf } from './job/reading-links.ts'
      export { proofOf } from './work/prove/proof-of.ts'
      export { plainOf } from './formula/given.ts'
      export { faulted } from './trade/proof/opening-fuse.ts'
      export { meterError } from './trade/proof/meter.ts'
      export { HEALTHY } from './trade/proof/fault.ts'
      export { everyFault } from './trade/proof/every-fault.ts'
      export { drawnOf } from './work/prove/drawn-of.ts'
      export { diagnosisOf } from './work/prove/diagnosis-of.ts'
      export { takenReadings } from './work/prove/taken-readings.ts'
      export { predictorOf, gaussianOf } from './trade/proof/predictor.ts'`,
  resolve('src'),
  bundle
)
const {
  readJob,
  benchNamed,
  pointsOf,
  diagnosisOf,
  takenReadings,
  proofOf,
  plainOf,
  faulted,
  meterError,
  HEALTHY,
  everyFault,
  drawnOf,
  gaussianOf,
  predictorOf
} = await import(bundle)
rmSync(folder, { recursive: true })

/** mulberry32: the same cases every time. */
function seeded(seed) {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}
const random = seeded(SEED)
const oneOf = list => list[Math.floor(random() * list.length)]
const evenLog = (low, high) => Math.exp(Math.log(low) + random() * Math.log(high / low))

const textOf = name => readFileSync(`examples/${name}`, 'utf8')
const benchFor = text => {
  const file = benchNamed(text)
  return file === null ? null : { file, text: textOf(file) }
}

const circuits = readdirSync('examples')
  .filter(name => /^[^.]+\.yaml$/.test(name))
  .map(name => ({ name, job: { ...readJob(name, textOf(name), benchFor(textOf(name))).job, readings: [] } }))
  .filter(({ job }) => job.circuit !== null)
  .map(one => ({ ...one, ...proofOf(one.job, one.job.circuit, []) }))
  .map(one => ({ ...one, faults: everyFault(one.tested, plainOf(one.tested).plain, drawnOf(one.job.circuit, one.open), one.points) }))

/** Faults of a size that a workshop would call one; the edges of what is looked for are left to doubt. */
function sizeOf({ kind, sizes }) {
  if (sizes.by === 'none') return 0
  if (sizes.by === 'list') return oneOf(sizes.of).size
  const { low, high } = sizes
  switch (kind) {
    case 'high-resistance':
    case 'bad-ground':
      return evenLog(low * (0.1 / 0.03), high)
    case 'source-low':
      return evenLog(Math.max(low, 0.5 * high), 0.97 * high)
    case 'source-high':
      return evenLog(1.03 * low, high)
    case 'short-to-ground':
      return evenLog(low, high / 3)
    case 'leads':
      return evenLog(1, high)
    default:
      return evenLog(low * 1.1, high / 1.1)
  }
}

/** The true circuit: every input anywhere within its bounds. */
function truthOf({ tested }) {
  const { plain, slots } = plainOf(tested)
  for (const { given, set } of slots) set(given.low + random() * (given.high - given.low))
  return plain
}

/** What the meter shows at every point, each reading off by anything its sheet allows. */
function shownAt({ points }, truth, fault, size) {
  const circuit = faulted(fault, truth, size)
  const ideal = points.map(point => circuit.shown(point))
  const read = ideal.map((value, i) => value + (2 * random() - 1) * meterError(points[i].takes, points[i].meter, value))
  return fault.shows === undefined ? read : fault.shows(read, size)
}

/** How far the fault moves the readings from a circuit in order, in standard deviations squared. */
function showing({ tested, points }, indexes, fault, size) {
  const predictor = predictorOf(
    tested,
    indexes.map(i => points[i])
  )
  const whole = { values: predictor.valuesOf(HEALTHY, 0), slopes: predictor.slopesOf(HEALTHY, 0) }
  return gaussianOf(predictor, whole).distance(predictor.valuesOf(fault, size))
}

const typedOf = (point, value) => ({
  takes: point.takes,
  red: point.red,
  black: point.black,
  passingA: point.passingA,
  amount: { value, low: value, high: value, text: '' },
  text: ''
})

const typedAt = ({ points }, indexes, shown) => indexes.map(i => typedOf(points[i], shown[i]))

/** The diagnosis alone. */
function judged({ job, tested, open, points }, indexes, shown) {
  const readings = takenReadings(job, pointsOf(job.circuit), typedAt({ points }, indexes, shown))
  return { readings, ...diagnosisOf({ tested, circuit: job.circuit, open, readings }) }
}

/** The diagnosis with what to measure next. */
function proved(circuit, indexes, shown) {
  return proofOf(circuit.job, circuit.job.circuit, typedAt(circuit, indexes, shown))
}

/** Place of the true fault among the suspects, from nought. */
function placeOf({ diagnosis }, fault) {
  return diagnosis.suspects.findIndex(({ members }) => members.some(one => one.fault.id === fault.id))
}

/** What was taken for what, with how likely both were held. */
function confused(confusions, { circuit, fault, size }, { diagnosis }) {
  const [{ members, probabilityRatio }] = diagnosis.suspects
  const own = diagnosis.suspects.find(one => one.members.some(member => member.fault.id === fault.id))
  const said = `${fault.kind} taken for ${members[0].fault.kind}`
  const percents = [probabilityRatio, own?.probabilityRatio ?? 0].map(ratio => Math.round(100 * ratio)).join(' % against ')
  const which = `${circuit.name}: ${fault.id} of ${Number(size.toPrecision(3))} → ${members[0].fault.id}, ${percents} %`
  confusions.set(said, [...(confusions.get(said) ?? []), which])
}

const share = (n, all) => `${((100 * n) / Math.max(1, all)).toFixed(1)} % (${n} of ${all})`
const SETS = {
  'every point': () => true,
  'power on alone': ({ takes, passingA }) => takes !== 'ohms' && passingA === null,
  'bus, loads, currents': ({ takes, says }) => takes === 'amps' || (takes === 'volts' && /^(bus|at )/.test(says))
}

const SHOWS = 25
const TRIES = 40
let hidden = 0
function drawnFault(circuit, kinds) {
  for (let tries = 0, kind = oneOf(kinds); ; tries++) {
    if (tries === TRIES) [tries, kind] = [0, oneOf(kinds)]
    const of = circuit.faults.filter(one => one.kind === kind)
    if (of.length === 0) continue
    const fault = oneOf(of)
    const size = sizeOf(fault)
    if (beyondTheMeter(circuit, fault, size)) continue
    if (showing(circuit, [...circuit.points.keys()], fault, size) >= SHOWS) return { fault, size }
    hidden++
  }
}

/** No meter shows a bus of 24 V a hundred times too large. */
function beyondTheMeter({ expected }, { kind, shows }, size) {
  return (
    kind === 'misread' &&
    shows(
      expected.map(({ value }) => value),
      size
    ).some(value => Math.abs(value) > 900)
  )
}

const KINDS = [...new Set(circuits.flatMap(({ faults }) => faults.map(({ kind }) => kind)))].filter(kind => kind !== 'healthy')
const began = Date.now()
console.log(`${FAULTS} faults, ${HEALTHY_CASES} circuits in order; seed ${SEED}; circuits: ${circuits.map(({ name }) => name).join(', ')}`)
const cases = Array.from({ length: FAULTS }, (_, i) => {
  const circuit = circuits[i % circuits.length]
  const { fault, size } = drawnFault(circuit, KINDS)
  return { circuit, fault, size, shown: shownAt(circuit, truthOf(circuit), fault, size) }
})
console.log(`set aside, too small to show at any point: ${hidden}`)
const sound = Array.from({ length: HEALTHY_CASES }, (_, i) => {
  const circuit = circuits[i % circuits.length]
  return { circuit, fault: HEALTHY, size: 0, shown: shownAt(circuit, truthOf(circuit), HEALTHY, 0) }
})

for (const [set, holds] of Object.entries(SETS)) {
  const confusions = new Map()
  const byKind = new Map(KINDS.map(kind => [kind, { all: 0, first: 0 }]))
  let [first, three, alone, members, seen, unseen] = [0, 0, 0, 0, 0, 0]
  for (const { circuit, fault, size, shown } of cases) {
    const indexes = circuit.points.flatMap((point, i) => (holds(point) ? [i] : []))
    const misreadOutside =
      fault.kind === 'misread' &&
      !indexes.some(i => fault.at === `${circuit.points[i].takes} ${circuit.points[i].red} to ${circuit.points[i].black}`)
    const leadsOutside = fault.kind === 'leads' && !indexes.some(i => circuit.points[i].takes === 'ohms')
    if (misreadOutside || leadsOutside) continue
    if (showing(circuit, indexes, fault, size) < SHOWS) {
      unseen++
      continue
    }
    seen++
    const proof = judged(circuit, indexes, shown)
    const place = placeOf(proof, fault)
    const [top] = proof.diagnosis.suspects
    const kind = byKind.get(fault.kind)
    kind.all++
    members += top.members.length
    if (place === 0) {
      first++
      kind.first++
      if (top.members.length === 1) alone++
    } else {
      confused(confusions, { circuit, fault, size }, proof)
    }
    if (place < 3) three++
  }
  let healthy = 0
  let alarms = 0
  for (const { circuit, shown } of sound) {
    const indexes = circuit.points.flatMap((point, i) => (holds(point) ? [i] : []))
    const proof = judged(circuit, indexes, shown)
    if (placeOf(proof, HEALTHY) === 0) healthy++
    else confused(confusions, { circuit, fault: HEALTHY, size: 0 }, proof)
    if (indexes.some(i => shown[i] < circuit.expected[i].low || shown[i] > circuit.expected[i].high)) alarms++
  }
  console.log(`\n${set}; set aside, too small to show there: ${unseen}`)
  console.log(`  true fault first            ${share(first, seen)}`)
  console.log(`  true fault in first three   ${share(three, seen)}`)
  console.log(`  first and alone             ${share(alone, seen)}; faults that count as one: ${(members / seen).toFixed(2)} on average`)
  console.log(`  in order called in order    ${share(healthy, sound.length)}; a reading out of band: ${alarms}`)
  console.log(`  by kind: ${[...byKind].map(([kind, { all, first }]) => `${kind} ${first}/${all}`).join(', ')}`)
  for (const [said, which] of [...confusions].sort((a, b) => b[1].length - a[1].length))
    console.log(`  ${which.length} × ${said}; as ${which[0]}`)
}

let [found, taken, saved] = [0, 0, 0]
for (const { circuit, fault, shown } of cases
  .filter(({ fault }) => fault.kind !== 'misread' && fault.kind !== 'leads')
  .slice(0, FOLLOWED)) {
  const { points } = circuit
  const indexes = [points.findIndex(({ says }) => says === 'bus')]
  let proof = proved(circuit, indexes, shown)
  while (proof.next.length > 0 && proof.next[0].gainBits > 0.1 && indexes.length < points.length) {
    const { point } = proof.next[0]
    indexes.push(
      points.findIndex(
        one => one.takes === point.takes && one.red === point.red && one.black === point.black && one.passingA === point.passingA
      )
    )
    proof = proved(circuit, indexes, shown)
  }
  if (placeOf(proof, fault) === 0) found++
  taken += indexes.length
  saved += points.length - indexes.length
}
const followed = Math.min(FOLLOWED, cases.length)
console.log(`\nfollowing the next point named, from the bus on, until it tells less than a tenth of a bit`)
console.log(
  `  true fault first            ${share(found, followed)}; readings taken ${(taken / followed).toFixed(1)} of ${((taken + saved) / followed).toFixed(1)}`
)
console.log(`\n${((Date.now() - began) / 1000).toFixed(0)} s`)
