import { bytesOf } from './bytes-of.ts'

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

/** Where a document stands in its row, and the words that it answers. */
interface Line {
  readonly number: number
  readonly words: string
}

/**
 * Documents of one command differ in their numbers alone: one that was put together in full is kept as the bytes around its numbers,
 * and those of further lines are put between.
 */
export class PlainCommand {
  private readonly sumOf: Plain
  private pieces: readonly string[] | null = null

  constructor(sumOf: Plain) {
    this.sumOf = sumOf
  }

  /** Undefined where none was learnt of yet, and of words that ask for more. */
  document(number: number, words: string): string | undefined {
    const { pieces } = this
    const sum = pieces === null ? undefined : this.sumOf(words)
    if (pieces === null || sum === undefined) return undefined
    const { given, results } = sum
    let text = `${pieces[0]}${number}${pieces[1]}${given}${pieces[2]}${bytesOf(words)}`
    for (let i = 0; i < results.length; i++) text += `${pieces[i + 3]}${results[i]}`
    return text + pieces[results.length + 3]
  }

  /** Takes a document apart that was put together in full. */
  learn(document: string, line: Line): void {
    const sum = this.pieces === null ? this.sumOf(line.words) : undefined
    if (sum !== undefined) this.pieces = piecesOf(document, line, sum)
  }
}

/** Null where one of the numbers is nought, as what nobody gave may be. */
function piecesOf(document: string, { number, words }: Line, { given, results }: PlainSum): readonly string[] | null {
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
  return [...pieces, document.slice(at)]
}
