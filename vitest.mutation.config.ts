import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { buildSync } from 'esbuild'
import { globSync } from 'tinyglobby'
import { defineConfig } from 'vitest/config'

const ROOM = process.env.FETTLE_ROOM ?? 'joint'

const outside = globSync('tests/outside/*.test.ts').filter(file => readFileSync(file, 'utf8').includes(`src/trade/${ROOM}/`))

/** Every mutant starts afresh, and the whole of mathjs takes ten times as long to load as all the rest. */
const units = resolve('mutation/units.js')
const contents = "export { createUnitClass } from 'mathjs'"
buildSync({ stdin: { contents, resolveDir: '.' }, bundle: true, format: 'esm', platform: 'node', outfile: units, logLevel: 'error' })

/** The tests that answer for the room under mutation. */
export default defineConfig({
  resolve: { alias: { mathjs: units } },
  test: {
    include: [`tests/trade/${ROOM}/**/*.test.ts`, ...outside],
    setupFiles: ['tests/scripts/same-every-time.ts'],
    isolate: false,
    testTimeout: 60_000
  },
  define: { FETTLE_VERSION: JSON.stringify('test') }
})
