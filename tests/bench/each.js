// 10,000 torques in one process against GNU units over the same list: whole process against whole process, medians. Never a test.
import { spawnSync } from 'node:child_process'
import { mkdtempSync, openSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

const RUNS = Number(process.argv[2] ?? 7)
const LINES = 10_000
const folder = mkdtempSync(join(tmpdir(), 'fettle-bench-'))
const torques = Array.from({ length: LINES }, (_, i) => (50 + i * 0.037).toFixed(3))
const lists = Object.fromEntries(['fettle', 'sixth', 'units', 'six', 'sixthOfSix'].map(name => [name, join(folder, name)]))
const SIX = ['N m', 'lbf inch', 'lbf ft', 'kgf cm', 'kgf m', 'oz force inch']
/** As many as give 10,000 conversions in six units each. */
const few = torques.filter((_, i) => i % SIX.length === 0)
const asked = some => some.map(torque => `torque ${torque} in-lb\n`).join('')
const inSix = some => some.flatMap(torque => SIX.map(unit => `${torque} inch lbf\n${unit}\n`)).join('')
writeFileSync(lists.fettle, asked(torques))
writeFileSync(lists.six, inSix(torques))
writeFileSync(lists.sixth, asked(few))
writeFileSync(lists.sixthOfSix, inSix(few))
writeFileSync(lists.units, torques.map(torque => `${torque} inch lbf\nN m\n`).join(''))

const PROGRAMS = {
  'empty node process': [process.execPath, ['-e', ''], '/dev/null'],
  'fettle each': [process.execPath, ['bin/fettle.js', 'each'], lists.fettle],
  'GNU units, one unit': ['units', ['-q', '-t'], lists.units],
  'GNU units, the same six': ['units', ['-q', '-t'], lists.six],
  'fettle each, a sixth of them': [process.execPath, ['bin/fettle.js', 'each'], lists.sixth],
  'GNU units, the same six of those': ['units', ['-q', '-t'], lists.sixthOfSix]
}

function millis([program, words, input]) {
  const before = process.hrtime.bigint()
  const { status, error } = spawnSync(program, words, { stdio: [openSync(input, 'r'), openSync(join(folder, 'out'), 'w'), 'inherit'] })
  if (error !== undefined || status !== 0) throw error ?? new Error(`${program} ended with ${status}`)
  return Number(process.hrtime.bigint() - before) / 1e6
}
const median = numbers => numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)]

const taken = Object.fromEntries(Object.keys(PROGRAMS).map(name => [name, []]))
for (let run = 0; run < RUNS; run++) for (const [name, program] of Object.entries(PROGRAMS)) taken[name].push(millis(program))
const ratio = (own, other) => (median(taken[own]) / median(taken[other])).toFixed(2)
console.log(`${LINES} torques; fettle gives six units, bounds and sources of each, GNU units one number`)
for (const [name, times] of Object.entries(taken)) console.log(`${name.padEnd(34)} ${median(times).toFixed(0).padStart(6)} ms`)
console.log(`${ratio('fettle each', 'GNU units, one unit')} × GNU units for one unit of each torque, five more given beside it`)
console.log(`${ratio('fettle each', 'GNU units, the same six')} × for the same ${LINES * SIX.length} conversions`)
console.log(
  `${ratio('fettle each, a sixth of them', 'GNU units, the same six of those')} × for the same ${few.length * SIX.length} conversions, of ${few.length} torques`
)
