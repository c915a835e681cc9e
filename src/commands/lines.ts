/** Far longer than any line by hand. */
const LONGEST = 20_000

export interface NumberedLine {
  readonly number: number
  /** Cut, and so of no use, where the line has no end in sight. */
  readonly text: string
  readonly tooLong: boolean
}

/** Lines of a text that comes in pieces, each as soon as it is whole; never more than one piece and one line is kept. */
export async function* linesOf(input: AsyncIterable<string | Uint8Array>): AsyncGenerator<Iterable<NumberedLine>> {
  const decoder = new TextDecoder()
  const state = { rest: '', number: 0, cut: false }
  for await (const piece of input) {
    const text = state.rest + (typeof piece === 'string' ? piece : decoder.decode(piece, { stream: true }))
    yield wholeLines(text, state)
    if (state.rest.length > LONGEST) [state.rest, state.cut] = ['', true]
  }
  state.rest += decoder.decode()
  if (state.rest !== '' || state.cut) yield [lineOf(++state.number, state.rest, state.cut)]
}

interface State {
  /** What has no end yet. */
  rest: string
  number: number
  /** Whether its beginning was thrown away. */
  cut: boolean
}

/** One by one: thousands of lines that are kept at a time are looked through again and again for what is no longer needed. */
function* wholeLines(text: string, state: State): Generator<NumberedLine> {
  let at = 0
  for (let end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', at)) {
    yield lineOf(++state.number, text.slice(at, end), state.cut)
    state.cut = false
    at = end + 1
  }
  state.rest = text.slice(at)
}

function lineOf(number: number, text: string, cut: boolean): NumberedLine {
  const whole = text.endsWith('\r') ? text.slice(0, -1) : text
  return { number, text: whole.slice(0, LONGEST), tooLong: cut || whole.length > LONGEST }
}
