import { isRecording } from './working.ts'

interface Answer<R> {
  readonly asked: Asked
  readonly given: R
}

/** What a calculation was asked: every key and word of it in order, every number likewise, and a sum that two askings alike have in common. */
interface Asked {
  readonly words: unknown[]
  readonly numbers: number[]
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
    const asked: Asked = { words: [], numbers: [], sum: 0 }
    ask(x, asked)
    for (const one of answers) if (isSame(one.asked, asked)) return one.given
    const given = of(x)
    answers[oldest] = { asked, given }
    oldest = (oldest + 1) % most
    return given
  }
}

/** Where a branch begins and ends, and where a number stands: no two trees read alike. */
const [OPENS, CLOSES, NUMBER] = [Symbol('opens'), Symbol('closes'), Symbol('number')]

function ask(node: unknown, asked: Asked): void {
  if (typeof node === 'number') {
    asked.words.push(NUMBER)
    asked.sum += node * asked.numbers.push(node)
  } else if (typeof node !== 'object' || node === null) asked.words.push(node)
  else {
    asked.words.push(OPENS)
    for (const key in node) {
      asked.words.push(key)
      ask((node as Record<string, unknown>)[key], asked)
    }
    asked.words.push(CLOSES)
  }
}

function isSame(before: Asked, now: Asked): boolean {
  return before.sum === now.sum && areSame(before.numbers, now.numbers) && areSame(before.words, now.words)
}

function areSame(before: readonly unknown[], now: readonly unknown[]): boolean {
  if (before.length !== now.length) return false
  for (let i = 0; i < now.length; i++) if (before[i] !== now[i]) return false
  return true
}
