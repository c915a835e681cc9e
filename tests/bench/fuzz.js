// Mutated jobs and mutated quantities without end: nothing may throw, print a number that is none, hang or grow. Never a test; a short run of the same is among the tests.
// node --expose-gc tests/bench/fuzz.js [jobs] [quantities] [seed]
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads'
import { bundled } from './bundled.js'

const [JOBS = 200_000, QUANTITIES = 200_000, SEED = 1] = process.argv.slice(2).map(Number)
/** No job takes so long, on however busy a machine; whoever does hangs. */
const STILL_MS = 600_000
/** What a heap may grow by, from a tenth of the run to its end. */
const GROWTH_MB = 24
/** What is stopped tells of all its pieces but the last. */
const PIECES = 200
const MOST_FLAWS = 20

if (isMainThread) await main()
else await work(workerData)

async function main() {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-fuzz-'))
  process.on('exit', () => rmSync(folder, { recursive: true }))
  const outfile = join(folder, 'fuzz.mjs')
  await bundled(
    `export { fuzzJobs } from './fuzz-jobs.ts'
        export { fuzzQuantities } from './fuzz-quantities.ts'
        export { basesIn } from './bases.ts'`,
    join(import.meta.dirname, '../fuzz'),
    outfile
  )
  console.log(`seed ${SEED}`)
  const sound = [await run('quantities', QUANTITIES, outfile), await run('jobs', JOBS, outfile)]
  process.exitCode = sound.every(Boolean) ? 0 : 1
}

/** In a thread of its own, so that a hang is seen; piece by piece, so that whoever stops it is told what was tried. */
function run(what, count, outfile) {
  return new Promise((resolve, reject) => {
    const began = performance.now()
    const done = new Int32Array(new SharedArrayBuffer(4))
    const worker = new Worker(new URL(import.meta.url), { workerData: { what, count, outfile, done, seed: SEED } })
    const all = { tried: 0, outcomes: {}, flaws: [], slowest: { ms: 0 }, growthMb: 0, rssMb: 0 }
    let [before, still] = [0, 0]
    const watch = setInterval(() => {
      still = done[0] === before ? still + 5000 : 0
      before = done[0]
      if (process.stderr.isTTY) process.stderr.write(`\r${what} ${before} of ${count}`)
      if (still < STILL_MS) return
      console.log(`${what}: number ${SEED + before} hangs`)
      process.exit(1)
    }, 5000)
    const stop = () => {
      console.log(`stopped: ${told(what, all, began)}`)
      process.exit(1)
    }
    process.on('SIGINT', stop).on('SIGTERM', stop)
    worker.on('error', reject)
    worker.on('message', piece => {
      add(all, piece)
      if (all.tried < count && all.flaws.length < MOST_FLAWS) return
      clearInterval(watch)
      process.off('SIGINT', stop).off('SIGTERM', stop)
      worker.terminate()
      console.log(told(what, all, began))
      resolve(all.flaws.length === 0 && all.growthMb < GROWTH_MB)
    })
  })
}

function add(all, { fuzzed, growthMb, rssMb }) {
  const { count, outcomes, flaws, slowest } = fuzzed
  all.tried += count
  for (const [outcome, n] of Object.entries(outcomes)) all.outcomes[outcome] = (all.outcomes[outcome] ?? 0) + n
  all.flaws.push(...flaws)
  if (slowest.ms > all.slowest.ms) all.slowest = slowest
  all.growthMb = growthMb
  all.rssMb = rssMb
}

function told(what, { tried, outcomes, flaws, slowest, growthMb, rssMb }, began) {
  const minutes = (performance.now() - began) / 60_000
  const counts = Object.entries(outcomes).map(([outcome, n]) => `${n} ${outcome}`)
  return [
    `${tried} mutated ${what} in ${minutes.toFixed(1)} min: ${counts.join(', ')}`,
    `  ${flaws.length} flaws; slowest ${slowest.ms.toFixed(0)} ms of CPU (number ${slowest.seed}); heap ${growthMb >= 0 ? '+' : ''}${growthMb.toFixed(1)} MB since a tenth of the run, ${rssMb.toFixed(0)} MB in all`,
    ...flaws.map(({ seed, says, text }) => `  number ${seed}: ${says}\n${text.slice(0, 2000)}`)
  ].join('\n')
}

async function work({ what, count, outfile, done, seed }) {
  const { fuzzJobs, fuzzQuantities, basesIn } = await import(pathToFileURL(outfile))
  const bases = basesIn('.')
  const heap = () => {
    globalThis.gc?.()
    return process.memoryUsage().heapUsed / 1e6
  }
  const piece = Math.ceil(count / PIECES)
  let early = 0
  for (let from = 0; from < count; from += piece) {
    const alive = n => Atomics.store(done, 0, from + n)
    const [many, own] = [Math.min(piece, count - from), seed + from]
    const fuzzed = what === 'jobs' ? fuzzJobs(many, own, bases, alive) : fuzzQuantities(many, own, alive)
    if (from < count / 10) early = heap()
    parentPort.postMessage({ fuzzed, growthMb: heap() - early, rssMb: process.memoryUsage().rss / 1e6 })
  }
}
