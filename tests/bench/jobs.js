// Generated jobs through `check --format ndjson` against the bare YAML parse of the same files: CPU and wall of whole processes, memory, and where the time goes. Never a test.
// node tests/bench/jobs.js [jobs] [seed]: one job with every number of it moved a little, a fresh file each; --job takes another, --without a,b leaves out whole blocks
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { availableParallelism, tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { parseArgs } from 'node:util'
import { parse, parseDocument, visit } from 'yaml'
import { bundled } from './bundled.js'

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { job: { type: 'string', default: 'tests/bench/eighty-fields.yaml' }, without: { type: 'string', default: '' } }
})
const [JOBS, SEED] = [Number(positionals[0] ?? 10_000), Number(positionals[1] ?? 20261)]
const WITHOUT = values.without.split(',').filter(Boolean)

const folder = mkdtempSync(join(tmpdir(), 'fettle-bench-'))
process.on('exit', () => rmSync(folder, { recursive: true }))

let state = SEED
/** Mulberry32: the same jobs on every machine. */
function random() {
  state = (state + 0x6d2b79f5) | 0
  let t = Math.imul(state ^ (state >>> 15), 1 | state)
  t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
  return ((t ^ (t >>> 14)) >>> 0) / 4294967296
}

const document = parseDocument(readFileSync(values.job, 'utf8'))
for (const block of WITHOUT) document.delete(block)
const template = document.toString()
/** Figures of sizes that are free, by up to two percent: the verdicts stay of several kinds. */
const moved = () =>
  template.replace(
    /\b(\d+\.\d+)( mm ±| m[,\s}]| mohm)/g,
    (_, figure, rest) => `${(Number(figure) * (0.98 + 0.04 * random())).toFixed(4)}${rest}`
  )

let [fields, bounds] = [0, 0]
visit(document, {
  Scalar: (key, { value }) => {
    if (key !== 'key') fields++
    if (key !== 'key' && /±|\.\./.test(String(value))) bounds++
  }
})

const files = Array.from({ length: JOBS }, (_, i) => join(folder, `job-${String(i).padStart(5, '0')}.yaml`))
for (const file of files) writeFileSync(file, moved())
const few = mkdtempSync(join(folder, 'few-'))
for (const file of files.slice(0, Math.ceil(JOBS / 10))) writeFileSync(join(few, file.split('/').at(-1)), readFileSync(file))
rmSync(join(folder, 'x'), { force: true })

const bare = join(folder, 'bare.mjs')
writeFileSync(
  bare,
  `import { readdirSync, readFileSync } from 'node:fs'
import { parse } from ${JSON.stringify(import.meta.resolve('yaml'))}
let read = 0
for (const name of readdirSync(process.argv[2])) if (name.endsWith('.yaml')) read += Object.keys(parse(readFileSync(process.argv[2] + '/' + name, 'utf8'))).length
if (read === 0) throw new Error('nothing read')`
)
const TOLD = `data:text/javascript,process.on('exit',()=>{const{userCPUTime:u,systemCPUTime:s,maxRSS:m}=process.resourceUsage();require('fs').writeSync(3,JSON.stringify({cpu:(u+s)/1e6,mb:m/1024}))});import{createRequire}from'module';const require=createRequire('/x')`

function taken(...args) {
  const before = performance.now()
  const { status, output, error } = spawnSync(process.execPath, ['--import', TOLD, ...args], {
    stdio: ['ignore', 'ignore', 'inherit', 'pipe']
  })
  if (error !== undefined || status === null || status > 1) throw error ?? new Error(`${args} ended with ${status}`)
  return { ...JSON.parse(output[3].toString()), wall: (performance.now() - before) / 1000 }
}

const parsed = taken(bare, folder)
const checked = taken('bin/fettle.js', 'check', `${folder}/job-*.yaml`, '--format', 'ndjson', '--threads', '1')
const spread = taken('bin/fettle.js', 'check', `${folder}/job-*.yaml`, '--format', 'ndjson')
const tenth = taken('bin/fettle.js', 'check', `${few}/*.yaml`, '--format', 'ndjson', '--threads', '1')
const line = (name, { cpu, wall, mb }) =>
  console.log(
    `${name.padEnd(34)} ${cpu.toFixed(1).padStart(7)} s CPU ${wall.toFixed(1).padStart(7)} s wall ${mb.toFixed(0).padStart(5)} MB at most`
  )
console.log(
  `${JOBS} jobs after ${values.job}, of ${fields} fields, bounds on ${bounds}; seed ${SEED}${WITHOUT.length > 0 ? `; without ${WITHOUT}` : ''}`
)
line('bare YAML parse', parsed)
line('fettle check, one thread', checked)
line(`fettle check, ${availableParallelism()} cores`, spread)
line(`fettle check, ${Math.ceil(JOBS / 10)} jobs`, tenth)
console.log(
  `${(checked.cpu / parsed.cpu).toFixed(1)} × the bare parse (CPU, one thread), ${(spread.wall / parsed.wall).toFixed(1)} × (from start to end, as it runs unasked); memory ${(checked.mb / tenth.mb).toFixed(2)} × that of a tenth of the files`
)

const outfile = join(folder, 'stages.mjs')
await bundled(
  `
      export { readYaml } from './src/job/yaml-text.ts'
      export { readJob } from './src/job/read-job.ts'
      export { judgeRead } from './src/work/job/judge-job.ts'
      export { printer } from './src/report/jobs-lines.ts'`,
  process.cwd(),
  outfile
)
const { readYaml, readJob, judgeRead, printer } = await import(pathToFileURL(outfile))
/** The first ones find nothing compiled. */
const WARM = Math.min(100, JOBS >> 1)
const texts = files.slice(0, 500).map(file => readFileSync(file, 'utf8'))
const stages = { 'bare YAML parse': 0, 'YAML with places': 0, 'fields and quantities': 0, 'judging, bounds included': 0, printing: 0 }
let running = false
const timed = (stage, work) => {
  const before = performance.now()
  const result = work()
  if (running) stages[stage] += performance.now() - before
  return result
}
for (const [k, text] of texts.entries()) {
  running = k >= WARM
  timed('bare YAML parse', () => parse(text))
  const before = stages['YAML with places']
  timed('YAML with places', () => readYaml('x', text))
  const read = timed('fields and quantities', () => readJob('x', text))
  stages['fields and quantities'] -= stages['YAML with places'] - before
  const answer = timed('judging, bounds included', () => judgeRead(read))
  timed('printing', () => printer({}).job(answer))
}
for (const [name, millis] of Object.entries(stages))
  console.log(`  ${name.padEnd(26)} ${(millis / (texts.length - WARM)).toFixed(2).padStart(7)} ms a job`)
const { 'bare YAML parse': alone, ...all } = stages
const whole = Object.values(all).reduce((sum, one) => sum + one)
console.log(
  `${(whole / alone).toFixed(1)} × the bare parse, job by job in turn in one process once it is warm: a machine that slows down slows both`
)
