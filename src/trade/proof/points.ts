import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { nearest } from '../../quantity/near.ts'
import { quoted } from '../../quantity/quoted.ts'

export interface Points {
  readonly red: string
  readonly black: string
}

const ACCEPTED = 'two points of the circuit, the red lead first, as "bus to chassis"'

/** `left+ to left-`, in small or capital letters. A point may have the word in its own name. */
export function readPoints(text: string, known: readonly string[]): Outcome<Points> {
  const plain = text.trim()
  const splits = [...plain.matchAll(/\s+to\s+/gi)].map(({ index, 0: word }) => ({
    red: plain.slice(0, index),
    black: plain.slice(index + word.length)
  }))
  if (splits.length === 0) return bad(`${quoted(text)} names no two points`, ACCEPTED)
  const found = splits.find(({ red, black }) => known.includes(red) && known.includes(black))
  if (found === undefined) return unknownPoint(splits[0]!, known)
  return found.red === found.black ? bad(`both leads at ${quoted(found.red)}`, ACCEPTED) : good(found)
}

function unknownPoint({ red, black }: Points, known: readonly string[]): Outcome<Points> {
  const stranger = known.includes(red) ? black : red
  return bad(`${quoted(stranger)}, which is no point of the circuit`, known.map(quoted).join(', '), nearest(stranger, known))
}
