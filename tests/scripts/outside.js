// Counts the checks against values from outside, and says of every formula whether one of them holds it: each formula is
// moved by a twentieth, one at a time, and some expectation of tests/outside/ must fail. A formula that none holds has its
// reason in tests/outside/formulas-left-out.md.
import { mkdirSync, readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'
import { globSync } from 'tinyglobby'

const MOVED = 0.05
const REASONS = 'tests/outside/formulas-left-out.md'
/** They look at files and at a browser, and ask no formula for a number. */
const WITHOUT_NUMBERS = /(rows|shipped-tables|sheet-in-browser)\.test\.ts$/

/** Which formulas were asked since it was emptied, and which one is moved by how much. */
const asked = new Set()
let moved = { name: '', by: 0 }
globalThis.fromFormula = (name, value) => {
  asked.add(name)
  return name === moved.name ? (value === 0 ? moved.by : value * (1 + moved.by)) : value
}

const { log } = console
/** A simulator among the checks talks a lot. */
for (const way of ['log', 'warn', 'error']) console[way] = () => {}
const { formulas, collected, groups, collectedAgain } = await loaded()
const tests = []
for (const test of fromOutside(collected)) tests.push(await tried(test))
tests.sort((a, b) => a.tookMs - b.tookMs)
/** What a group of checks works out before its first check, it asks for while it is collected. */
const askedBefore = new Map(groups.map(group => [group, asksOf(group)]))
const held = new Map()
for (const { name } of formulas) held.set(name, await holding(name))
for (const { id, run } of tests.filter(({ asks }) => asks.size > 0)) {
  const failure = await failureOf(run)
  if (failure !== undefined) throw new Error(`${id} does not pass again after all that: ${failure.message}`)
}
process.exitCode = told() ? 0 : 1

/** Every formula of the trade, and the checks, in one file in which each formula can be moved. */
async function loaded() {
  mkdirSync('mutation', { recursive: true })
  const outfile = resolve('mutation/outside.mjs')
  const files = globSync(['src/trade/**/*.ts', 'src/fitting/**/*.ts'], { ignore: '**/*.d.ts' }).sort()
  const checks = globSync('tests/outside/*.test.ts').filter(file => !WITHOUT_NUMBERS.test(file))
  const contents = [
    `export { collected, collectedAgain, groups } from 'vitest'`,
    ...files.map((file, i) => `import * as m${i} from './${file}'`),
    `export const modules = { ${files.map((file, i) => `${JSON.stringify(file)}: m${i}`).join(', ')} }`,
    ...checks.map(file => `await import('./${file}')`)
  ].join('\n')
  await build({
    stdin: { contents, resolveDir: process.cwd() },
    alias: { vitest: resolve('tests/scripts/tests-at-hand.js') },
    define: { FETTLE_VERSION: '"test"' },
    inject: [resolve('tests/scripts/same-every-time.ts')],
    plugins: [{ name: 'moved', setup }],
    ...{ packages: 'external', bundle: true, format: 'esm', platform: 'node', target: 'node20.19', outfile, logLevel: 'error' }
  })
  const { modules, ...atHand } = await import(pathToFileURL(outfile))
  const formulas = Object.entries(modules).flatMap(([file, exported]) =>
    Object.values(exported).flatMap(one => (typeof one === 'function' && 'equation' in one ? [{ file, name: one.gives }] : []))
  )
  return { formulas, ...atHand }
}

function fromOutside(all) {
  return all.filter(({ name }) => !name.includes('shipped data: '))
}

function setup({ onLoad }) {
  onLoad({ filter: /src\/formula\/formula\.ts$/ }, movable)
  onLoad({ filter: /src\/formula\/few-recalled\.ts$/ }, forgetful)
}

/** What was worked out with a formula moved would be remembered when it is not. */
function forgetful() {
  return { contents: 'export function fewRecalled(most: number, of: unknown) { return of }', loader: 'ts' }
}

function movable({ path }) {
  const text = readFileSync(path, 'utf8')
  const contents = text.replace('const value = of(x)', 'const value = globalThis.fromFormula(gives, of(x))')
  if (contents === text) throw new Error(`${path} works out its value elsewhere now`)
  return { contents, loader: 'ts' }
}

async function tried({ id, name, run }) {
  asked.clear()
  const start = performance.now()
  const failure = await failureOf(run)
  if (failure !== undefined) throw new Error(`${id} fails as it is: ${failure}`)
  return { id, name, run, tookMs: performance.now() - start, asks: new Set(asked) }
}

/** The check that fails when the formula is moved, up or down. That it ends elsewhere, out of a range, is not enough. */
async function holding(name) {
  try {
    for (const by of [MOVED, -MOVED]) {
      moved = { name, by }
      for (const test of [...tests.filter(({ asks }) => asks.has(name)), ...again(name)])
        if ((await failureOf(test.run))?.name === 'AssertionError') return test
    }
    return undefined
  } finally {
    moved = { name: '', by: 0 }
  }
}

/** The checks of every group that asks for it while it is collected, collected anew. */
function again(name) {
  return groups
    .filter(group => askedBefore.get(group).has(name))
    .flatMap(group => {
      try {
        return fromOutside(collectedAgain(group))
      } catch {
        return []
      }
    })
}

function asksOf(group) {
  asked.clear()
  collectedAgain(group)
  return new Set(asked)
}

async function failureOf(run) {
  try {
    await run()
    return undefined
  } catch (error) {
    return error
  }
}

/** Prints the figures and every formula without a check; whether each of those has its reason, and no reason is left over. */
function told() {
  const reasons = readReasons()
  const bare = formulas.filter(({ name }) => held.get(name) === undefined)
  for (const { file, name } of bare)
    log(`${reasons.has(name) ? 'explained' : 'WITHOUT  '}  ${name}  ${file}${reasons.has(name) ? `: ${reasons.get(name)}` : ''}`)
  const stale = [...reasons.keys()].filter(name => !bare.some(one => one.name === name))
  for (const name of stale) log(`STALE      ${name} has a reason in ${REASONS}, and needs none`)
  const unexplained = bare.filter(({ name }) => !reasons.has(name)).length
  log(`${tests.length} outside checks, in ${globSync('tests/outside/*.test.ts').length} files`)
  log(
    `${formulas.length - bare.length} of ${formulas.length} formulas are held by one (moved by ${MOVED * 100} %, it fails); ${share(bare.length)} are not: ${bare.length - unexplained} with a reason, ${unexplained} without`
  )
  return unexplained === 0 && stale.length === 0
}

function readReasons() {
  const lines = readFileSync(REASONS, 'utf8')
    .split('\n')
    .filter(line => line.startsWith('- '))
  return new Map(
    lines.map(line => {
      const [, name, reason] = /^- (\w+): (\S.*\.)$/.exec(line) ?? []
      if (reason === undefined) throw new Error(`${REASONS} has a line without a name and its reason: ${line}`)
      return [name, reason]
    })
  )
}

function share(count) {
  return `${count} (${((100 * count) / formulas.length).toFixed(1)} %)`
}
