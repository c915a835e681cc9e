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

/** In a thread of its own, so that a hang is seen. */
function run(what, count, outfile) {
  return new Promise((resolve, reject) => {
    const began = performance.now()
    const done = new Int32Array(new SharedArrayBuffer(4))
    const worker = new Worker(new URL(import.meta.url), { workerData: { what, count, outfile, done, seed: SEED } })
    let [before, still] = [0, 0]
    const watch = setInterval(() => {
      still = done[0] === before ? still + 5000 : 0
      before = done[0]
      if (process.stderr.isTTY) process.stderr.write(`\r${what} ${before} of ${count}`)
      if (still < STILL_MS) return
      console.log(`${what}: number ${SEED + before} hangs`)
      process.exit(1)
    }, 5000)
    worker.on('error', reject)
    worker.on('message', ({ fuzzed, growthMb, rssMb }) => {
      clearInterval(watch)
      const minutes = (performance.now() - began) / 60_000
      console.log(
        `${count} mutated ${what} in ${minutes.toFixed(1)} min: ${Object.entries(fuzzed.outcomes)
          .map(([outcome, n]) => `${n} ${outcome}`)
          .join(', ')}`
      )
      console.log(
        `  ${fuzzed.flaws.length} flaws; slowest ${fuzzed.slowest.ms.toFixed(0)} ms of CPU (number ${fuzzed.slowest.seed}); heap ${growthMb >= 0 ? '+' : ''}${growthMb.toFixed(1)} MB from a tenth of the run to its end, ${rssMb.toFixed(0)} MB in all`
      )
      for (const { seed, says, text } of fuzzed.flaws) console.log(`  number ${seed}: ${says}\n${text.slice(0, 2000)}`)
      resolve(fuzzed.flaws.length === 0 && growthMb < GROWTH_MB)
    })
  })
}

async function work({ what, count, outfile, done, seed }) {
  const { fuzzJobs, fuzzQuantities, basesIn } = await import(pathToFileURL(outfile))
  let early = 0
  const heap = () => {
    globalThis.gc?.()
    return process.memoryUsage().heapUsed / 1e6
  }
  const alive = n => {
    Atomics.store(done, 0, n)
    if (n === Math.ceil(count / 10)) early = heap()
  }
  const fuzzed = what === 'jobs' ? fuzzJobs(count, seed, basesIn('.'), alive) : fuzzQuantities(count, seed, alive)
  parentPort.postMessage({ fuzzed, growthMb: heap() - early, rssMb: process.memoryUsage().rss / 1e6 })
}
