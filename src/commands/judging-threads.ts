import { availableParallelism } from 'node:os'
import type { Worker } from 'node:worker_threads'
import type { JobAnswer } from '../report/jobs-answer.ts'
import type { Live } from './describe.ts'
import type { Judging } from './judged-file.ts'
import { PIPED } from './read-job-file.ts'

/** What a thread is asked. */
export interface Asked {
  readonly file: string
  readonly judging: Judging
}

/** Fewer files than these a thread are judged before it has warmed up. */
const LEAST_FILES = 24
/** Each holds a program of its own in memory. */
const MOST_THREADS = 8
/** How many files a thread is asked for ahead: it need not wait, and little is kept. */
const AHEAD = 2

/** How many threads pay for so many files. */
export function threadsFor(files: readonly string[], wanted: number | undefined): number {
  if (files.includes(PIPED)) return 1
  return wanted ?? Math.min(availableParallelism(), MOST_THREADS, Math.floor(files.length / LEAST_FILES))
}

type Ask = (asked: Asked) => Promise<JobAnswer>

/** Judges the files on so many threads, and gives the answers in the order of the files. */
export async function* judgedOnThreads(
  files: readonly string[],
  judging: Judging,
  { start, count }: { readonly start: NonNullable<Live['thread']>; readonly count: number }
): AsyncGenerator<JobAnswer> {
  const threads = await Promise.all(Array.from({ length: count }, () => start('check.run.cjs', 'judgeOnThread')))
  const asks = threads.map(askOf)
  const waiting = new Map<number, Promise<JobAnswer>>()
  const ask = (i: number) => files[i] !== undefined && waiting.set(i, asks[i % count]!({ file: files[i], judging }))
  try {
    for (let i = 0; i < count * AHEAD; i++) ask(i)
    for (const i of files.keys()) {
      yield await waiting.get(i)!
      waiting.delete(i)
      ask(i + count * AHEAD)
    }
  } finally {
    await Promise.all(threads.map(thread => thread.terminate()))
  }
}

/** A thread answers in the order in which it is asked. Where it falls, so does every question it has not answered. */
function askOf(thread: Worker): Ask {
  const open: { readonly resolve: (answer: JobAnswer) => void; readonly reject: (reason: unknown) => void }[] = []
  thread.on('message', answer => open.shift()?.resolve(answer))
  thread.on('error', error => {
    for (const { reject } of open.splice(0)) reject(error)
  })
  return asked => {
    const answer = new Promise<JobAnswer>((resolve, reject) => open.push({ resolve, reject }))
    // Told by the first that is waited for; the others are not to be told again.
    answer.catch(() => {})
    thread.postMessage(asked)
    return answer
  }
}
