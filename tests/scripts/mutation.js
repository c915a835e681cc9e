// Changes the code of a trade room in every small way, one at a time, and counts how many changes some test notices.
// Vitest itself would start a thread and load all modules for each change; here the tests stay loaded.
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { setPriority } from 'node:os'
import { setTimeout } from 'node:timers/promises'
import { Script } from 'node:vm'
import { bundledTests } from './bundled-tests.js'
import { changesOf } from './changes.js'
import { failureOf } from './tests-of-room.js'

const LEAST_PERCENT = 85
const ROOMS = ['circuit', 'heat', 'hole', 'joint', 'mass', 'proof', 'supply', 'thread']
const AGAIN = '--again'
/** A change that no test has noticed after so long counts as unnoticed, whatever the slowest tests would have said. */
const PATIENCE_S = 3
/** After so many changes it says how far it is, and keeps what it knows: a run that is stopped goes on with --again. */
const TOLD_EVERY = 50
/** Coming by so many times as often is going round without end. */
const ENDLESS = 100

const NEVER = Symbol('never settled')

/** What the changed code asks. */
const ns = {}
globalThis.__stryker__ = ns

async function changeRoom(room, again) {
  Object.assign(ns, { counted: false, mutantCoverage: undefined })
  const { changes, text } = await changesOf(room)
  const { collected } = await import(await bundledTests(room, { name: 'changed', changed: text }))
  const tests = await triedAll(collected)
  const noticedBy = new Map(collected.map(({ id }) => [id, 0]))
  const known = again ? knownOf(room) : new Set()
  for (const [done, change] of changes.entries()) {
    change.outcome = known.has(keyOf(change)) ? 'noticed before' : await outcomeOf(change, { tests, noticedBy })
    if ((done + 1) % TOLD_EVERY === 0) keep(room, changes, done + 1)
  }
  keep(room, changes, changes.length)
  return told(room, changes)
}

function keep(room, changes, done) {
  const judged = changes.slice(0, done)
  writeFileSync(reportOf(room), JSON.stringify(judged, null, 1))
  const open = judged.filter(({ outcome }) => outcome === 'unnoticed' || outcome === 'met by no test').length
  console.error(`${room}: ${done} of ${changes.length} changes, ${open} unnoticed, ${cpuS().toFixed(0)} s of CPU`)
}

/** Every test as the code is: how long it takes, and which changes it comes by how often. */
async function triedAll(collected) {
  const tests = []
  for (const { id, run } of collected) {
    ns.currentTestId = id
    const start = performance.now()
    const failure = await failureOf(run)
    if (failure !== undefined) throw new Error(`${id} fails as it is: ${failure}`)
    tests.push({ id, run, tookMs: performance.now() - start, passes: ns.mutantCoverage?.perTest[id] ?? {} })
  }
  Object.assign(ns, { currentTestId: undefined, counted: true })
  return tests
}

/** The quickest test and those that noticed most go first. The one that notices must pass again without the change. */
async function outcomeOf(change, { tests, noticedBy }) {
  const passing = tests.filter(({ passes }) => passes[change.id] !== undefined)
  if (passing.length === 0) return ns.mutantCoverage.static[change.id] === undefined ? 'met by no test' : 'while loading'
  const cost = ({ id, tookMs }) => tookMs / (1 + noticedBy.get(id))
  const start = cpuS()
  for (const test of passing.sort((a, b) => cost(a) - cost(b))) {
    if (cpuS() - start > PATIENCE_S) break
    const outcome = await triedWith(change, test)
    if (outcome === 'unnoticed') continue
    noticedBy.set(test.id, 1 + noticedBy.get(test.id))
    change.by = test.id
    return outcome
  }
  return 'unnoticed'
}

async function triedWith({ id }, { run, passes }) {
  Object.assign(ns, { activeMutant: id, hitCount: 0, hitLimit: ENDLESS * passes[id] })
  const failure = await Promise.race([failureOf(() => stoppable(run)), neverSettled()])
  const endless = ns.hitCount > ns.hitLimit || failure === NEVER
  Object.assign(ns, { activeMutant: undefined, hitCount: undefined })
  if (endless) return 'without end'
  if (failure === undefined) return 'unnoticed'
  return (await failureOf(run)) === undefined ? 'noticed' : 'left something behind'
}

const tried = new Script('globalThis.__tried__()')

/** A change may send a test round without end outside the place of the change. */
function stoppable(run) {
  globalThis.__tried__ = run
  try {
    return tried.runInThisContext({ timeout: PATIENCE_S * 1000 })
  } catch (error) {
    if (error.code !== 'ERR_SCRIPT_EXECUTION_TIMEOUT') throw error
    ns.hitCount = Number.POSITIVE_INFINITY
    throw error
  }
}

/** A change may leave a test waiting for what never comes. */
async function neverSettled() {
  await setTimeout(PATIENCE_S * 1000)
  return NEVER
}

function cpuS() {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1e6
}

/** What was noticed the last time, as long as its line is the same. */
function knownOf(room) {
  if (!existsSync(reportOf(room))) return new Set()
  return new Set(
    JSON.parse(readFileSync(reportOf(room), 'utf8'))
      .filter(({ outcome }) => outcome.startsWith('noticed'))
      .map(keyOf)
  )
}

function keyOf({ file, column, kind, was, to }) {
  return [file, column, kind, was, to].join('\n')
}

function reportOf(room) {
  return `mutation/${room}.json`
}

function told(room, changes) {
  const count = (...outcomes) => changes.filter(({ outcome }) => outcomes.includes(outcome)).length
  const noticed = count('noticed', 'noticed before', 'without end')
  const judged = noticed + count('unnoticed', 'met by no test')
  for (const { file, line, kind, from, to, outcome } of changes)
    if (outcome === 'unnoticed' || outcome === 'met by no test') console.log(`${file}:${line} ${outcome}: ${kind} ${from} → ${to}`)
  const percent = (100 * noticed) / judged
  if (!(percent >= LEAST_PERCENT)) process.exitCode = 1
  const [before, broken] = [count('noticed before'), count('left something behind')]
  const notes = [before > 0 && `${before} of them the last time`, broken > 0 && `${broken} could not be judged`].filter(Boolean)
  const beside = notes.map(note => `; ${note}`).join('')
  return `${room}: ${percent.toFixed(1)} % (${noticed} of ${judged} changes noticed; at least ${LEAST_PERCENT} % wanted${beside})`
}

setPriority(10)
const asked = process.argv.slice(2).filter(word => word !== AGAIN)
const lines = []
for (const room of asked.length > 0 ? asked : ROOMS) lines.push(await changeRoom(room, process.argv.includes(AGAIN)))
console.log(lines.join('\n'))
