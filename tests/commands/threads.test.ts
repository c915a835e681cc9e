// example: files judged on several threads: the same words in the same order, and what becomes of a thread that falls
import { spawnSync } from 'node:child_process'
import { EventEmitter } from 'node:events'
import type { Worker } from 'node:worker_threads'
import { describe, expect, it } from 'vitest'
import { judgedOnThreads, threadsFor } from '../../src/commands/judging-threads.ts'
import { ran } from './run.ts'

const FILES = [
  'examples/hydraulic-tank-sensor.yaml',
  'nowhere.yaml',
  'examples/bad/wrench-too-large.yaml',
  'examples/gearbox-preheater.yaml'
]
const checked = (...words: readonly string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['bin/fettle.js', 'check', ...FILES, ...words], { encoding: 'utf8' })
  return { status, stdout, stderr }
}

describe('the built program', () => {
  it.each(['ndjson', 'table', 'junit'])('prints the same %s with one thread and with three', format => {
    const one = checked('--format', format, '--threads', '1')
    expect(one.status).toBe(2)
    expect(one.stderr).toContain('nowhere.yaml')
    expect(checked('--format', format, '--threads', '3')).toEqual(one)
  })

  it('gives the threads what is to be asked', () => {
    const asked = ['--format', 'ndjson', '--only', 'torque/outside-wrench-range', '--practice', 'boat', '--samples', '200']
    const one = checked(...asked, '--threads', '1')
    expect(one.stdout).toContain('"samples"')
    expect(checked(...asked, '--threads', '2')).toEqual(one)
  })
})

it.each(['0', '65', '2.5'])('--threads %s is refused', async count => {
  const { exit, err } = await ran(['check', FILES[0]!, '--threads', count])
  expect(exit).toBe(2)
  expect(err).toContain('--threads')
})

it('one thread for few files and for what is piped in; as many as are wanted', () => {
  const many = Array.from({ length: 10_000 }, (_, i) => `${i}.yaml`)
  expect(threadsFor(FILES, undefined)).toBeLessThan(2)
  expect(threadsFor([...many, '-'], 4)).toBe(1)
  expect(threadsFor(FILES, 3)).toBe(3)
  expect(threadsFor(many, undefined)).toBeLessThanOrEqual(8)
})

/** Stands for a thread: it answers each question by `answer`, and notes its end. */
class Standing extends EventEmitter {
  ended = false
  readonly #answer: (file: string) => void
  constructor(answer: (file: string, thread: EventEmitter) => void) {
    super()
    this.#answer = file => answer(file, this)
  }
  postMessage({ file }: { readonly file: string }) {
    setImmediate(() => this.#answer(file))
  }
  async terminate() {
    this.ended = true
  }
}

describe('a thread that falls', () => {
  it('is told once, and all are ended', async () => {
    const threads: Standing[] = []
    const start = async () => {
      const thread = new Standing((file, at) => (file === 'c' ? at.emit('error', new Error('fallen')) : at.emit('message', { file })))
      threads.push(thread)
      return thread as unknown as Worker
    }
    const seen: string[] = []
    const judging = { practice: undefined, only: [], skip: [], samples: 0 }
    const all = async () => {
      for await (const { file } of judgedOnThreads(['a', 'b', 'c', 'd', 'e', 'f'], judging, { start, count: 2 })) seen.push(file)
    }
    await expect(all()).rejects.toThrow('fallen')
    expect(seen).toEqual(['a', 'b'])
    expect(threads.map(({ ended }) => ended)).toEqual([true, true])
  })
})
