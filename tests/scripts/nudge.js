// Moves every constant in the code of a trade room by a hundredth, one at a time, and lists those that no test notices.
import { mkdirSync, readFileSync } from 'node:fs'
import { setPriority } from 'node:os'
import { relative, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'
import ts from 'typescript'
import { failureOf, testsOf } from './tests-of-room.js'

const ROOMS = ['circuit', 'heat', 'hole', 'joint', 'mass', 'proof', 'supply', 'thread']
const SHARE = 0.01
/** Lists as long as this are tables: they are held against their published rows. */
const TABLE_LENGTH = 6

async function nudgeRoom(room) {
  const constants = []
  const loaded = await loadedWith(room, constants)
  const unnoticed = []
  for (const [k, constant] of constants.entries()) if (!(await isNoticed(loaded, k))) unnoticed.push(constant)
  for (const { file, line, value } of unnoticed) console.log(`${file}:${line} ${value}`)
  const noticed = constants.length - unnoticed.length
  console.log(`${room}: ${noticed} of ${constants.length} constants noticed by a test when moved by ${SHARE * 100} %`)
}

/** Which constants were asked for since it was emptied. */
const asks = new Set()
globalThis.constant = (k, value) => {
  asks.add(k)
  return k === globalThis.moved ? (value === 0 ? SHARE : value * (1 + SHARE)) : value
}

/** The tests of a room in one file, in which each constant asks whether it is the one to move; quickest first. */
async function loadedWith(room, constants) {
  mkdirSync('mutation', { recursive: true })
  const outfile = resolve(`mutation/nudge-${room}.mjs`)
  const contents = [`export { collected } from 'vitest'`, ...testsOf(room).map(file => `await import('./${file}')`)].join('\n')
  const filter = new RegExp(`/src/trade/${room}/.*\\.ts$`)
  await build({
    stdin: { contents, resolveDir: process.cwd() },
    alias: { vitest: resolve('tests/scripts/tests-at-hand.js') },
    define: { FETTLE_VERSION: '"test"' },
    inject: [resolve('tests/scripts/same-every-time.ts')],
    plugins: [
      { name: 'nudge', setup: ({ onLoad }) => onLoad({ filter }, ({ path }) => ({ contents: asking(path, constants), loader: 'ts' })) }
    ],
    ...{ bundle: true, format: 'esm', platform: 'node', target: 'node20.19', outfile, logLevel: 'error' }
  })
  const { href } = pathToFileURL(outfile)
  const { collected } = await import(href)
  const atLoad = new Set(asks)
  const tests = []
  for (const test of collected) tests.push(await tried(test))
  return { href, atLoad, tests: tests.toSorted((a, b) => a.tookMs - b.tookMs) }
}

async function tried({ id, run }) {
  asks.clear()
  const start = performance.now()
  const failure = await failureOf(run)
  if (failure !== undefined) throw new Error(`${id} fails as it is: ${failure}`)
  return { id, run, tookMs: performance.now() - start, asks: new Set(asks) }
}

async function isNoticed({ href, atLoad, tests }, k) {
  globalThis.moved = k
  try {
    return await anyFails(atLoad.has(k) ? await loadedAgain(href, k, tests) : tests.filter(test => test.asks.has(k)))
  } finally {
    globalThis.moved = undefined
  }
}

/** A constant outside functions is read once: everything is loaded again with it moved. What does not even load is noticed. */
async function loadedAgain(href, k, tests) {
  try {
    const { collected } = await import(`${href}?${k}`)
    const place = new Map(tests.map(({ id }, i) => [id, i]))
    return collected.toSorted((a, b) => place.get(a.id) - place.get(b.id))
  } catch (error) {
    const run = () => Promise.reject(error)
    return [{ run }]
  }
}

async function anyFails(tests) {
  for (const { run } of tests) if ((await failureOf(run)) !== undefined) return true
  return false
}

/** Tables are left as they are, and so are the ranges of formulas: those stand in the handbook, and the test of the handbook notices. */
function isLeft(node) {
  if (ts.isPropertyAssignment(node)) return node.name.getText() === 'inputs'
  return ts.isTypeNode(node) || (ts.isArrayLiteralExpression(node) && node.elements.length >= TABLE_LENGTH)
}

/** The text of a file in which every number asks. */
function asking(path, constants) {
  const text = readFileSync(path, 'utf8')
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true)
  const numbers = []
  const visit = node => {
    if (isLeft(node)) return
    if (ts.isNumericLiteral(node) && !ts.isElementAccessExpression(node.parent) && node.parent.name !== node) numbers.push(node)
    else ts.forEachChild(node, visit)
  }
  visit(source)
  return numbers.reduceRight((changed, node) => {
    const [start, end, value] = [node.getStart(), node.end, node.getText()]
    const k = constants.push({ file: relative('.', path), line: source.getLineAndCharacterOfPosition(start).line + 1, value }) - 1
    return `${changed.slice(0, start)}globalThis.constant(${k}, ${value})${changed.slice(end)}`
  }, text)
}

setPriority(10)
const asked = process.argv.slice(2)
for (const room of asked.length > 0 ? asked : ROOMS) await nudgeRoom(room)
