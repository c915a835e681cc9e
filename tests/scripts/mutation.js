// Changes the code of a trade room in every small way, one at a time, and counts how many changes some test notices.
import { setPriority } from 'node:os'
import { Stryker } from '@stryker-mutator/core'

const LEAST_PERCENT = 80
const BY_VITEST = '--by-vitest'
const ROOMS = ['joint', 'hole', 'thread']

setPriority(10)
const asked = process.argv.slice(2).filter(word => word !== BY_VITEST)
const runner = process.argv.includes(BY_VITEST) ? { testRunner: 'vitest', plugins: ['@stryker-mutator/*'] } : {}
const lines = []
for (const room of asked.length > 0 ? asked : ROOMS) {
  process.env.FETTLE_ROOM = room
  const mutate = [`src/trade/${room}/**/*.ts`]
  const mutants = await new Stryker({ ...runner, mutate, jsonReporter: { fileName: `mutation/${room}.json` } }).runMutationTest()
  const count = (...statuses) => mutants.filter(({ status }) => statuses.includes(status)).length
  const noticed = count('Killed', 'Timeout')
  const judged = noticed + count('Survived', 'NoCoverage')
  const percent = (100 * noticed) / judged
  if (!(percent >= LEAST_PERCENT)) process.exitCode = 1
  const broken = count('RuntimeError', 'CompileError')
  const unjudged = broken === 0 ? '' : `; ${broken} could not be judged`
  lines.push(`${room}: ${percent.toFixed(1)} % (${noticed} of ${judged} changes noticed; at least ${LEAST_PERCENT} % wanted${unjudged})`)
}
console.log(lines.join('\n'))
