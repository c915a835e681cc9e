// A thread in which the tests of a room are loaded again with one constant moved, and run until one notices. What it loaded goes with it:
// nothing else lets go of a loaded module, and a room loads its tests hundreds of times.
import { parentPort, workerData } from 'node:worker_threads'
import { failureOf } from './tests-of-room.js'

const { href, k, to, ids } = workerData
globalThis.constant = (asked, value) => (asked === k ? to : value)
parentPort.postMessage(await noticing())

/** The name of the test that notices; what does not even load is noticed without one. */
async function noticing() {
  const runs = new Map()
  try {
    const { collected } = await import(href)
    for (const { id, run } of collected) runs.set(id, run)
  } catch {
    return 'loading'
  }
  for (const id of ids) if ((await failureOf(runs.get(id))) !== undefined) return id
  return undefined
}
