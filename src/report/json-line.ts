import type { Answer, AnswerInput, Result } from './answer.ts'
import { errorJson, FORMAT, findingJson, inputJson, type Locate, resultJson, sourceIdsOf, sourcesJson, tablesJson } from './json.ts'

/** Which line of many it answers, and how it would end alone. */
export interface LineEnd {
  readonly line: number
  readonly exit: number
}

/**
 * The document of an answer as one line of text. Its words are the same from line to line, so that the text around the
 * numbers is kept: to make objects of it all and text of them takes longer than the sums.
 */
export function lineText(answer: Answer, { line, exit }: LineEnd, locate: Locate): string {
  const { command, inputs, results, tables, findings, cautions, working, errors } = answer
  let text = `{"format":"${FORMAT}","command":${wordText(command)},"line":${line},"exit":${exit},"inputs":{`
  let comma = ''
  for (const name of Object.keys(inputs)) {
    text += comma + inputText(name, inputs[name]!)
    comma = ','
  }
  text += '},"results":{'
  comma = ''
  for (const result of results) {
    text += comma + resultText(result)
    comma = ','
  }
  text += `},"tables":${tablesText(tables)},"findings":${listText(findings.map(one => findingJson(one, locate)))}`
  text += `,"cautions":${listText(cautions)},"sources":${sourcesText(answer)}`
  if (working !== undefined) text += `,"working":${listText(working)}`
  if (errors !== undefined) text += `,"errors":${listText(errors.map(errorJson))}`
  return `${text}}\n`
}

/** Beyond so many all texts are let go: names may hold words of the user. */
const MOST = 1000

/** A memory of texts that never grows beyond its bounds. */
function keeping<K, T>(make: (key: K) => T): (key: K) => T {
  const known = new Map<K, T>()
  return key => {
    const before = known.get(key)
    if (before !== undefined) return before
    if (known.size >= MOST) known.clear()
    const made = make(key)
    known.set(key, made)
    return made
  }
}

const wordText = keeping((word: string) => JSON.stringify(word))

/** What stands in JSON as it is. */
const BARE = /^[ !#-[\]-~]*$/

function textText(text: string): string {
  return BARE.test(text) ? `"${text}"` : JSON.stringify(text)
}

function inputText(name: string, input: AnswerInput): string {
  const { value, low, high, unit, assumed, text } = input
  if (assumed !== null) return `${wordText(name)}:${assumedText(input)}`
  if (typeof value !== 'number' || !Number.isFinite(value) || low !== null || high !== null)
    return `${wordText(name)}:${JSON.stringify(inputJson(input))}`
  return `${wordText(name)}:{"value":${value}${givenIn(unit)}${textText(text)}}`
}

const assumedTexts = new WeakMap<AnswerInput, string>()

/** A default is the same input again and again. */
function assumedText(input: AnswerInput): string {
  const text = assumedTexts.get(input) ?? JSON.stringify(inputJson(input))
  assumedTexts.set(input, text)
  return text
}

/** An exact number that was given, from its value to its text. */
const givenIn = keeping((unit: string) => `,"low":null,"high":null,"unit":${JSON.stringify(unit)},"assumed":null,"text":`)

/** A result without bounds, around its number. */
interface Frame extends Pick<Result, 'name' | 'symbol' | 'unit' | 'source'> {
  readonly before: string
  readonly after: string
}

const frames = new Map<string, Frame>()

function resultText(result: Result): string {
  const { id, value, low, high, rss, samples } = result
  if (typeof value !== 'number' || low !== null || high !== null || rss !== null || samples !== undefined)
    return `${wordText(id)}:${JSON.stringify(resultJson(result))}`
  const { before, after } = frameOf(result)
  return `${before}${value}${after}`
}

function frameOf({ id, name, symbol, unit, source }: Result): Frame {
  const known = frames.get(id)
  if (known?.name === name && known.symbol === symbol && known.unit === unit && known.source === source) return known
  if (frames.size >= MOST) frames.clear()
  const before = `${JSON.stringify(id)}:{"name":${JSON.stringify(name)},"symbol":${JSON.stringify(symbol)},"value":`
  const after = `,"unit":${JSON.stringify(unit)},"low":null,"high":null,"rss":null,"source":${JSON.stringify(source)}}`
  const frame = { name, symbol, unit, source, before, after }
  frames.set(id, frame)
  return frame
}

function tablesText(tables: Answer['tables']): string {
  return Object.keys(tables).length === 0 ? '{}' : JSON.stringify(tablesJson(tables))
}

function listText(list: readonly unknown[]): string {
  return list.length === 0 ? '[]' : JSON.stringify(list)
}

const sourcesBy = keeping((ids: string) =>
  JSON.stringify(sourcesJson(ids === '' ? [] : (ids.split(',') as ReturnType<typeof sourceIdsOf>)))
)

function sourcesText(answer: Answer): string {
  return sourcesBy(sourceIdsOf(answer).join())
}
