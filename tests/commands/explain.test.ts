// property: whatever a command prints the name of can be explained
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { COMMANDS } from '../../src/commands/list.ts'
import { judgeJob } from '../../src/work/job/judge-job.ts'
import { KNOWN_RESULTS } from '../../src/work/results/known-results.ts'
import { inExampleFolder, outputOf, wordsOf } from '../docs/example-output.ts'

inExampleFolder()

/** Sums whose results are listed by id; those of thread, drill and torque are told in the page of results alone. */
const LISTED = [...new Set(KNOWN_RESULTS.map(({ id }) => id.split('.')[0]!))]

/** Each under the name the user gave, or there for some materials alone. */
const BY_NAME = /\.(taper|second|bottoming)$|^(specific-heat|steady\.still)$/

describe.each(COMMANDS.filter(({ name }) => LISTED.includes(name)))('$name', ({ name, examples }) => {
  it('explains every result and every finding of its examples', async () => {
    for (const example of examples) {
      const { results, findings } = JSON.parse((await outputOf([...wordsOf(example), '--json'])).out)
      const ids = Object.keys(results).filter(id => !BY_NAME.test(id))
      expect(ids.length).toBeGreaterThan(0)
      for (const id of [...ids.map(one => `${name}.${one}`), ...findings.map(({ rule }: { rule: string }) => rule)])
        expect((await outputOf(['explain', id])).err, id).toBe('')
    }
  })

  it('explains that it has no answer', async () => {
    const { exit, out } = await outputOf(['explain', `${name}/no-answer`])
    expect(exit).toBe(0)
    expect(out).toContain('way out')
  })
})

it('finds a result by its place in a job, and a bare id in every room that has it', async () => {
  expect((await outputOf(['explain', 'holes.left:hole.tip-depth'])).out).toMatch(/^result {4}hole\.tip-depth: /)
  expect((await outputOf(['explain', 'stress-area'])).out).toContain('joint.stress-area')
  expect((await outputOf(['explain', 'power'])).out.match(/^result/gm)!.length).toBe(3)
})

it('tells a name that nothing has, with the nearest', async () => {
  const { exit, err } = await outputOf(['explain', 'hole.tip-deph'])
  expect(exit).toBe(2)
  expect(err).toContain('did you mean hole.tip-depth?')
})

it('explains every result of the example jobs', async () => {
  for (const file of readdirSync('.').filter(name => name.endsWith('.yaml') && !name.includes('bench'))) {
    const { results } = judgeJob(file, readFileSync(file, 'utf8'))
    const ids = [...new Set(results.map(({ id }) => id.split(':').at(-1)!))].filter(id => !BY_NAME.test(id))
    expect(ids.length).toBeGreaterThan(0)
    for (const id of ids) expect((await outputOf(['explain', id])).err, id).toBe('')
  }
})
