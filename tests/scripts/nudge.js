// Moves every constant in the code of a trade room by a hundredth, one at a time, and lists those that no test notices.
import { setPriority } from 'node:os'
import { bundledTests } from './bundled-tests.js'
import { asking } from './constants.js'
import { remarksOf, stands } from './explained.js'
import { failureOf } from './tests-of-room.js'

const ROOMS = ['circuit', 'heat', 'hole', 'joint', 'mass', 'proof', 'supply', 'thread']

/** Whether every constant is noticed or explained. */
async function nudgeRoom(room) {
  const constants = []
  const loaded = await loadedWith(room, constants)
  const remarks = remarksOf(room)
  const isExplained = constant => remarks.some(remark => stands(constant, remark))
  const unnoticed = []
  for (const [k, constant] of constants.entries()) {
    if (await isNoticed(loaded, k, constant)) continue
    unnoticed.push(constant)
    if (!isExplained(constant)) console.log(`${constant.file}:${constant.line} ${constant.text}`)
  }
  const idle = remarks.filter(remark => !unnoticed.some(constant => stands(constant, remark)))
  for (const { file, code } of idle) console.log(`${file}: \`${code}\` is explained, and noticed`)
  const left = unnoticed.filter(constant => !isExplained(constant)).length
  const [all, noticed] = [constants.length, constants.length - unnoticed.length]
  console.log(`${room}: ${noticed} of ${all} noticed, ${unnoticed.length - left} explained, ${left} left`)
  return left + idle.length === 0
}

/** Which constants were asked for since it was emptied, and the one that is moved. */
const asks = new Set()
let moved
globalThis.constant = (k, value) => {
  asks.add(k)
  return k === moved?.k ? moved.to : value
}

/** The tests of a room in one file, in which each constant asks whether it is the one to move; quickest first. */
async function loadedWith(room, constants) {
  const href = await bundledTests(room, { name: 'nudged', changed: path => asking(path, constants) })
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

async function isNoticed({ href, atLoad, tests }, k, { moves }) {
  for (const to of moves) {
    moved = { k, to }
    const asking = atLoad.has(k) ? await loadedAgain(`${href}?${k}=${to}`, tests) : tests.filter(test => test.asks.has(k))
    const noticed = await anyFails(asking)
    moved = undefined
    if (noticed) return true
  }
  return false
}

/** A constant outside functions is read once: everything is loaded again with it moved. What does not even load is noticed. */
async function loadedAgain(href, tests) {
  try {
    const { collected } = await import(href)
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

setPriority(10)
const asked = process.argv.slice(2)
for (const room of asked.length > 0 ? asked : ROOMS) if (!(await nudgeRoom(room))) process.exitCode = 1
