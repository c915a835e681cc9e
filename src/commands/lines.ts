/** Far longer than any line by hand. */
const LONGEST = 20_000

export interface NumberedLine {
  readonly number: number
  /** Cut, and so of no use, where the line has no end in sight. */
  readonly text: string
  readonly tooLong: boolean
}

/** Lines of a text that comes in pieces, each as soon as it is whole; never more than one piece and one line is kept. */
export async function* linesOf(input: AsyncIterable<string | Uint8Array>): AsyncGenerator<readonly NumberedLine[]> {
  const decoder = new TextDecoder()
  let [rest, number, cut] = ['', 0, false]
  for await (const piece of input) {
    const parts = (rest + (typeof piece === 'string' ? piece : decoder.decode(piece, { stream: true }))).split('\n')
    rest = parts.pop()!
    yield parts.map((text, i) => lineOf(++number, text, i === 0 && cut))
    if (parts.length > 0) cut = false
    if (rest.length > LONGEST) [rest, cut] = ['', true]
  }
  rest += decoder.decode()
  if (rest !== '' || cut) yield [lineOf(++number, rest, cut)]
}

function lineOf(number: number, text: string, cut: boolean): NumberedLine {
  const whole = text.endsWith('\r') ? text.slice(0, -1) : text
  return { number, text: whole.slice(0, LONGEST), tooLong: cut || whole.length > LONGEST }
}
