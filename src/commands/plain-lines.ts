import { bytesOf } from './bytes-of.ts'
import type { NumberedLine } from './lines.ts'

/** The numbers of a document, in their order: what was given, and its results. */
export interface PlainSum {
  readonly given: number
  readonly results: readonly number[]
}

/**
 * What a quick command makes of its plainest form, one number with its unit; undefined of anything that asks for more,
 * and of anything in it that a shell would look at.
 */
export type Plain = (words: string) => PlainSum | undefined

export interface PlainLine extends PlainSum {
  readonly name: string
  readonly number: number
  readonly words: string
}

/** A line of the plainest form, where its command has a quick way for that. */
export function plainLine({ text, number, tooLong }: NumberedLine, plains: ReadonlyMap<string, Plain>): PlainLine | undefined {
  const gap = tooLong ? -1 : text.indexOf(' ')
  const name = text.slice(0, Math.max(0, gap))
  const words = text.slice(gap + 1)
  const sum = plains.get(name)?.(words)
  return sum && { name, number, words, given: sum.given, results: sum.results }
}

/**
 * Documents of one command differ in their numbers alone: one that was put together in full is kept as the bytes around its numbers,
 * and those of further lines are put between.
 */
export class Around {
  private readonly pieces: readonly string[]

  private constructor(pieces: readonly string[]) {
    this.pieces = pieces
  }

  /** Null where one of them is nought, as what nobody gave may be. */
  static of(document: string, { number, given, words, results }: PlainLine): Around | null {
    if (given === 0 || results.includes(0)) return null
    const fields = [`"line":${number},`, `"value":${given},`, `"text":"${bytesOf(words)}"`, ...results.map(one => `"value":${one},`)]
    const pieces: string[] = []
    let at = 0
    for (const field of fields) {
      const found = document.indexOf(field, at)
      if (found < 0) return null
      const start = found + field.indexOf(':') + (field.endsWith('"') ? 2 : 1)
      pieces.push(document.slice(at, start))
      at = found + field.length - 1
    }
    return new Around([...pieces, document.slice(at)])
  }

  document({ number, given, words, results }: PlainLine): string {
    const { pieces } = this
    let text = `${pieces[0]}${number}${pieces[1]}${given}${pieces[2]}${bytesOf(words)}`
    for (let i = 0; i < results.length; i++) text += `${pieces[i + 3]}${results[i]}`
    return text + pieces[results.length + 3]
  }
}
