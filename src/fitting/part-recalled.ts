import { isRecording } from '../formula/working.ts'

/** Where the numbers of a part stand: what holds each, and under which key. */
interface Places {
  readonly holders: { readonly [key: string]: unknown }[]
  readonly keys: string[]
}

interface Answer<R> {
  readonly numbers: readonly unknown[]
  readonly given: R
}

interface Known<R> {
  readonly places: Places
  readonly answers: Answer<R>[]
  oldest: number
}

/** Two inputs, each at its nominal, at its ends and just inside them, are more than move most parts. */
const MOST = 16

/** Beyond so many parts all are let go: those of one tree are fewer, and a weak memory costs the collector of garbage more. */
const MOST_PARTS = 256

/** A conductor is a row of a table: no bounds set a number in it. */
export const CONSTANT = ['conductor']

/**
 * A calculation from a part of a tree that remembers, by that part, what it gave for the last few sets of numbers in it. Bounds set
 * numbers of one tree anew, and nothing else of it: where no number of the part is another, the calculation gives the same object again.
 * `unread` are keys in the part, at any depth, under which it reads no number. While working is wanted all is worked out, step by step.
 */
export function partRecalled<X extends object, R>(of: (part: X) => R, unread: readonly string[] = CONSTANT): (part: X) => R {
  const known = new Map<X, Known<R>>()
  return part => {
    if (isRecording()) return of(part)
    const mine = known.get(part)
    if (mine === undefined) {
      const given = of(part)
      const places = placesIn(part, { holders: [], keys: [] }, unread)
      if (known.size >= MOST_PARTS) known.clear()
      known.set(part, { places, answers: [{ numbers: numbersAt(places), given }], oldest: 0 })
      return given
    }
    return (mine.answers.find(one => isNow(one.numbers, mine.places)) ?? added(mine, of(part))).given
  }
}

function added<R>(known: Known<R>, given: R): Answer<R> {
  const answer = { numbers: numbersAt(known.places), given }
  known.oldest = (known.oldest + 1) % MOST
  known.answers[known.oldest] = answer
  return answer
}

function placesIn(node: object, found: Places, unread: readonly string[]): Places {
  const holder = node as { readonly [key: string]: unknown }
  for (const key of Object.keys(node)) {
    const child = holder[key]
    if (typeof child === 'string' || unread.includes(key)) continue
    if (typeof child === 'number') {
      found.holders.push(holder)
      found.keys.push(key)
    } else if (typeof child === 'object' && child !== null) placesIn(child, found, unread)
  }
  return found
}

function numbersAt({ holders, keys }: Places): readonly unknown[] {
  return keys.map((key, i) => holders[i]![key])
}

function isNow(numbers: readonly unknown[], { holders, keys }: Places): boolean {
  for (let i = 0; i < keys.length; i++) if (holders[i]![keys[i]!] !== numbers[i]) return false
  return true
}
