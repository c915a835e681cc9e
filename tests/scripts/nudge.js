// Moves every constant in the code of a trade room by a hundredth, one at a time, and lists those that no test notices.
import { once } from 'node:events'
import { setPriority } from 'node:os'
import { Worker } from 'node:worker_threads'
import { bundledTests } from './bundled-tests.js'
import { asking } from './constants.js'
import { remarksOf, stands } from './explained.js'
import { failureOf } from './tests-of-room.js'

const ROOMS = ['circuit', 'heat', 'hole', 'joint', 'mass', 'proof', 'supply', 'thread']

/** Whether every constant is noticed or explained: of a room, or of one file of it, as `proof/gaussian`. */
async function nudgeRoom(place) {
  const [room, topic] = place.split('/')
  const constants = []
  const loaded = await loadedWith(room, constants)
  const remarks = remarksOf(room)
  const isAsked = ({ file }) => topic === undefined || file.endsWith(`/${topic}.ts`)
  const count = { noticed: 0, explained: 0, left: 0 }
  for (const [k, constant] of constants.entries()) {
    if (!isAsked(constant)) continue
    const found = remarks.some(remark => stands(constant, remark))
      ? 'explained'
      : (await isNoticed(loaded, k, constant))
        ? 'noticed'
        : 'left'
    count[found]++
    if (found === 'left') console.log(`${constant.file}:${constant.line} ${constant.text}`)
  }
  console.log(`${place}: ${count.noticed} of ${constants.filter(isAsked).length} noticed, ${count.explained} explained, ${count.left} left`)
  return count.left === 0
}

/** Which constants were asked for since it was emptied, and the one that is moved. */
const asks = new Set()
let moved
globalThis.constant = (k, value) => {
  asks.add(k)
  return k === moved?.k ? moved.to : value
}

/** What takes a processor longer would be run for hours: it is left out. */
const LONGEST_MS = 1500

/** The tests of a room in one file, in which each constant asks whether it is the one to move; quickest first. */
async function loadedWith(room, constants) {
  const href = await bundledTests(room, { name: 'nudged', changed: path => asking(path, constants) })
  const { collected } = await import(href)
  const atLoad = new Set(asks)
  const tests = []
  for (const test of collected) tests.push(await tried(test))
  return { href, atLoad, tests: tests.filter(({ tookMs }) => tookMs < LONGEST_MS).toSorted((a, b) => a.tookMs - b.tookMs) }
}

async function tried({ id, run }) {
  asks.clear()
  const start = process.cpuUsage()
  const failure = await failureOf(run)
  if (failure !== undefined) throw new Error(`${id} fails as it is: ${failure}`)
  return { id, run, tookMs: process.cpuUsage(start).user / 1000, asks: new Set(asks) }
}

/** What noticed one constant is asked first about the next: it is likely to be of the same formula. */
async function isNoticed({ href, atLoad, tests }, k, { moves }) {
  for (const to of moves) {
    const by = await (atLoad.has(k) ? noticingAfresh({ href, k, to, ids: tests.map(({ id }) => id) }) : noticing(tests, { k, to }))
    if (by === undefined) continue
    const place = tests.findIndex(({ id }) => id === by)
    if (place > 0) tests.unshift(...tests.splice(place, 1))
    return true
  }
  return false
}

async function noticing(tests, move) {
  moved = move
  const failing = await firstFailing(tests.filter(test => test.asks.has(move.k)))
  moved = undefined
  return failing?.id
}

async function firstFailing(tests) {
  for (const test of tests) if ((await failureOf(test.run)) !== undefined) return test
  return undefined
}

/** A constant outside functions is read once: everything is loaded again with it moved. */
async function noticingAfresh(workerData) {
  const worker = new Worker(new URL('loaded-again.js', import.meta.url), { workerData })
  const [by] = await once(worker, 'message')
  await worker.terminate()
  return by
}

setPriority(10)
const asked = process.argv.slice(2)
for (const room of asked.length > 0 ? asked : ROOMS) if (!(await nudgeRoom(room))) process.exitCode = 1
