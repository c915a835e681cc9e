import { isRecording } from './working.ts'

interface Answer<R> {
  readonly asked: Asked
  readonly given: R
}

/** What a calculation was asked: every key, number and word of it in order, and a sum that two askings alike have in common. */
interface Asked {
  readonly all: unknown[]
  sum: number
}

/**
 * A calculation that remembers its last answers. Bounds move one input at a time, so that most parts of a whole are asked
 * for the same again. It never changes a number; while working is wanted all is worked out, step by step.
 */
export function fewRecalled<X, R>(most: number, of: (x: X) => R): (x: X) => R {
  const answers: Answer<R>[] = []
  let oldest = 0
  return x => {
    if (isRecording()) return of(x)
    const asked: Asked = { all: [], sum: 0 }
    ask(x, asked)
    for (const one of answers) if (isSame(one.asked, asked)) return one.given
    const given = of(x)
    answers[oldest] = { asked, given }
    oldest = (oldest + 1) % most
    return given
  }
}

/** Where a branch begins and ends: no two trees read alike. */
const [OPENS, CLOSES] = [Symbol('opens'), Symbol('closes')]

function ask(node: unknown, asked: Asked): void {
  if (typeof node !== 'object' || node === null) {
    asked.all.push(node)
    if (typeof node === 'number') asked.sum += node * asked.all.length
    return
  }
  asked.all.push(OPENS)
  for (const key in node) {
    asked.all.push(key)
    ask((node as Record<string, unknown>)[key], asked)
  }
  asked.all.push(CLOSES)
}

function isSame(before: Asked, now: Asked): boolean {
  if (before.sum !== now.sum || before.all.length !== now.all.length) return false
  return before.all.every((one, i) => one === now.all[i])
}
