// What the tests import as `vitest` where they stay loaded from one change of the code to the next: they are
// collected once, and run as often as is wanted, with the same `expect`.
import { chai, JestAsymmetricMatchers, JestChaiExpect, JestExtend, setState } from '@vitest/expect'

for (const part of [JestExtend, JestChaiExpect, JestAsymmetricMatchers]) chai.use(part)

export function expect(value, message) {
  setState({ assertionCalls: 0 }, expect)
  return chai.expect(value, message)
}
Object.assign(expect, chai.expect)
Object.defineProperties(expect, Object.getOwnPropertyDescriptors(chai.expect))

/** Every test that was collected: `{ id, name, run }`. */
export const collected = []
let path = []
let preparing = []

export function it(name, run) {
  const id = [...path, name].join(' > ')
  const first = preparing
  const prepared = async () => {
    for (const prepare of first) await prepare()
    await run()
  }
  collected.push({ id: `${collected.length} ${id}`, name: id, run: first.length === 0 ? run : prepared })
}

/** Done once, before the first test that stands beside or below it. */
export function beforeAll(prepare) {
  let done
  preparing = [...preparing, () => (done ??= Promise.resolve(prepare()))]
}

/** What stands together at the top of a file, to be collected again. */
export const groups = []

export function describe(name, collect) {
  if (path.length === 0) groups.push({ name, collect })
  inside(name, collect)
}

function inside(name, collect) {
  const outer = [path, preparing]
  path = [...path, name]
  collect()
  ;[path, preparing] = outer
}

/** The tests of a group, whose body is run anew. */
export function collectedAgain({ name, collect }) {
  const before = collected.length
  inside(name, collect)
  return collected.splice(before)
}

const each = one => rows => (name, run) => {
  for (const [i, row] of rows.entries()) one(`${name} [${i}]`, () => run(...(Array.isArray(row) ? row : [row])))
}
it.each = each(it)
describe.each = each(describe)

/** What asks another program is left to the suite. */
const leftOut = () => Object.assign(() => {}, { each: () => () => {} })
it.skipIf = leftOut
describe.skipIf = leftOut

export { it as test }

/** Stands for a hook or a switch that these tests do not use: to be written when one does. */
const missing = name => () => {
  throw new Error(`${name} is not known to tests/scripts/tests-at-hand.js`)
}
export const [beforeEach, afterAll, afterEach] = ['beforeEach', 'afterAll', 'afterEach'].map(missing)
