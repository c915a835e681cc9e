// Whole processes side by side with an empty node process; prints ratios of medians. Never a test.
import { spawnSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'

const RUNS = Number(process.argv[2] ?? 25)
const folder = mkdtempSync(join(tmpdir(), 'fettle-bench-'))
const empty = join(folder, 'empty.mjs')
const bare = join(folder, 'bare.mjs')
writeFileSync(empty, '')
await build({
  stdin: {
    contents:
      "import { Command } from 'commander'\nnew Command('x').command('y').argument('<z>').action(() => console.log('z')).parent.parse()",
    resolveDir: process.cwd()
  },
  bundle: true,
  format: 'esm',
  platform: 'node',
  banner: { js: "import { createRequire as r } from 'node:module'; const require = r(import.meta.url);" },
  outfile: bare
})

const fettle = (...words) => ['bin/fettle.js', ...words]
const TIMED = {
  'empty node process': [empty],
  'commander alone': [bare, 'y', '1'],
  '--version': fettle('--version'),
  '--help': fettle('--help'),
  'torque --json': fettle('torque', '155', 'in-lb', '--json'),
  'drill --json': fettle('drill', '7/16', '--json'),
  'drop --json': fettle('drop', '--current', '8 A', '--wire', '2.5 mm2', '--length', '7 m', '--json'),
  'torque, table': fettle('torque', '155', 'in-lb'),
  'thread, table': fettle('thread', 'M12x1.5'),
  'check one job --json': fettle('check', 'examples/gearbox-preheater.yaml', '--json')
}

const millis = words => {
  const before = process.hrtime.bigint()
  const { status } = spawnSync(process.execPath, words, { stdio: ['ignore', 'ignore', 'inherit'], env: { ...process.env, COLUMNS: '100' } })
  if (status !== 0) throw new Error(`${words.join(' ')} ended with ${status}`)
  return Number(process.hrtime.bigint() - before) / 1e6
}
const median = numbers => numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)]

const taken = Object.fromEntries(Object.keys(TIMED).map(name => [name, []]))
for (let run = 0; run <= RUNS; run++) for (const [name, words] of Object.entries(TIMED)) if (run > 0) taken[name].push(millis(words))
const floor = median(taken['empty node process'])
for (const [name, times] of Object.entries(taken))
  console.log(`${name.padEnd(24)} ${(median(times) / floor).toFixed(2)} × an empty process`)
