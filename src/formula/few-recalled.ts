import { Asked, sumOf } from './asked.ts'
import { isRecording } from './working.ts'

interface Answer<R> {
  readonly asked: Asked
  readonly sum: number
  readonly given: R
}

/**
 * A calculation that remembers its last answers. Bounds move one input at a time, so that most parts of a whole are asked
 * for the same again. It never changes a number; while working is wanted all is worked out, step by step.
 */
export function fewRecalled<X extends object, R>(most: number, of: (x: X) => R): (x: X) => R {
  const answers: Answer<R>[] = []
  let oldest = 0
  return x => {
    if (isRecording()) return of(x)
    const sum = sumOf(x)
    for (const one of answers) if (one.sum === sum && one.asked.isSame(x)) return one.given
    const asked = new Asked(x)
    const given = of(x)
    answers[oldest] = { asked, sum, given }
    oldest = (oldest + 1) % most
    return given
  }
}
