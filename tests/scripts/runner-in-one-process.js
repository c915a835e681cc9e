// A test runner for Stryker that loads the tests of one room once and runs them again for every change of the code.
// Vitest itself starts a thread and loads all modules for each, which is most of the time.
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'
import { failureOf, testsOf } from './tests-of-room.js'

const COVERED = '__stryker__'

class RunnerInOneProcess {
  capabilities() {
    return { reloadEnvironment: false }
  }

  async init() {
    this.ns = globalThis[COVERED] ??= {}
    const outfile = resolve('mutation/tests.mjs')
    const contents = [`export { collected } from 'vitest'`, ...testsOf(process.env.FETTLE_ROOM).map(file => `await import('./${file}')`)]
    // esbuild notes the folder at its own start, which is before Stryker moves to its copy.
    const absWorkingDir = process.cwd()
    await build({
      absWorkingDir,
      stdin: { contents: contents.join('\n'), resolveDir: absWorkingDir },
      alias: { vitest: resolve('tests/scripts/tests-at-hand.js') },
      define: { FETTLE_VERSION: '"test"' },
      inject: [resolve('tests/scripts/same-every-time.ts')],
      ...{ bundle: true, format: 'esm', platform: 'node', target: 'node20.19', outfile, logLevel: 'error' }
    })
    const { collected } = await import(pathToFileURL(outfile).href)
    this.took = new Map()
    this.tests = new Map(collected.map(test => [test.id, test]))
  }

  async dryRun() {
    const tests = []
    for (const { id, name, run } of this.tests.values()) {
      this.ns.currentTestId = id
      const start = performance.now()
      const failureMessage = await failureOf(run)
      const timeSpentMs = performance.now() - start
      this.took.set(id, timeSpentMs)
      tests.push({ id, name, timeSpentMs, ...(failureMessage === undefined ? { status: 0 } : { status: 1, failureMessage }) })
    }
    this.ns.currentTestId = undefined
    return { status: 'complete', tests, mutantCoverage: this.ns.mutantCoverage }
  }

  /** The quickest test first, up to the one that notices. That test must pass again without the change, or the change has left something behind. */
  async mutantRun({ activeMutant, testFilter, hitLimit }) {
    let nrOfTests = 0
    const took = id => this.took.get(id) ?? 0
    for (const id of [...(testFilter ?? this.tests.keys())].sort((a, b) => took(a) - took(b))) {
      nrOfTests++
      const { run } = this.tests.get(id)
      Object.assign(this.ns, { activeMutant: activeMutant.id, hitCount: 0, hitLimit })
      const failureMessage = await failureOf(run)
      const endless = this.ns.hitCount > hitLimit
      Object.assign(this.ns, { activeMutant: undefined, hitCount: undefined, hitLimit: undefined })
      if (endless) return { status: 'timeout', reason: 'goes round without end' }
      if (failureMessage === undefined) continue
      const left = await failureOf(run)
      if (left !== undefined) return { status: 'error', errorMessage: `${id} fails without the change too: ${left}` }
      return { status: 'killed', killedBy: [id], failureMessage, nrOfTests }
    }
    return { status: 'survived', nrOfTests }
  }
}

export const strykerPlugins = [{ kind: 'TestRunner', name: 'in-one-process', injectableClass: RunnerInOneProcess }]
