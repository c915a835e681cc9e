import { openSync } from 'node:fs'
import { stat } from 'node:fs/promises'
import { type Diagnostic, onCommandLine } from '../quantity/diagnostic.ts'
import type { Fault } from '../quantity/fault.ts'
import { nearest } from '../quantity/near.ts'
import { quoted } from '../quantity/quoted.ts'
import type { Answer } from '../report/answer.ts'
import { errorJson, FORMAT } from '../report/json.ts'
import { lineText } from '../report/json-line.ts'
import { bytesOf } from './bytes-of.ts'
import type { Description, Live, Run, Shell } from './describe.ts'
import { each as description } from './each.ts'
import { filePieces } from './file-pieces.ts'
import { linesOf, type NumberedLine } from './lines.ts'
import { COMMANDS } from './list.ts'
import { PlainCommand } from './plain-lines.ts'
import type { QuickRun } from './quick-sum.ts'
import { PIPED, reasonOf } from './read-job-file.ts'
import { readOptions } from './read-options.ts'
import { refuse } from './refuse.ts'
import { splitLine } from './split-line.ts'
import { readWords } from './words.ts'

export const run: Run = async (typed, shell) => {
  const { words, errors } = readWords(description.rows, {}, typed)
  if (errors.length > 0) return refuse(description.name, errors, shell)
  const input = await inputOf(words.file, shell.live)
  if ('found' in input) return refuse(description.name, [{ ...input, where: onCommandLine('<file>') }], shell)
  return answered(words.file, input, shell)
}

/** What is written in one go: writing every line by itself would cost more than working it out. */
const AT_ONCE = 1 << 16

async function answered(file: string, input: Live['input'], { out, strict, live }: Shell): Promise<number> {
  let [exit, waiting] = [0, '']
  for await (const lines of linesOf(input)) {
    for (const line of lines) {
      const answer = answerTo(line, file, strict)
      const { text, exit: own } = answer instanceof Promise ? await answer : answer
      exit = Math.max(exit, own)
      waiting += text
      if (waiting.length < AT_ONCE) continue
      out(waiting, 'latin1')
      waiting = ''
      await live.drained()
      if (live.stop.aborted) return exit
    }
    // Somebody may wait for the answer before the next question.
    if (waiting !== '') out(waiting, 'latin1')
    waiting = ''
    await live.drained()
  }
  return exit
}

interface Answered {
  /** As bytes. */
  readonly text: string
  readonly exit: number
}

/** Nothing, or a remark. */
const IDLE = /^\s*(#|$)/

function answerTo(line: NumberedLine, file: string, strict: boolean): Answered | Promise<Answered> {
  const gap = line.tooLong ? -1 : line.text.indexOf(' ')
  const plain = gap < 0 ? undefined : plains.get(line.text.slice(0, gap))
  if (plain === undefined) return answerInFull(line, file, strict)
  const words = line.text.slice(gap + 1)
  const text = plain.document(line.number, words)
  if (text !== undefined) return { text, exit: 0 }
  const answer = answerInFull(line, file, strict)
  if (!(answer instanceof Promise)) plain.learn(answer.text, { number: line.number, words })
  return answer
}

/** The first use of a command waits for its work to be loaded; after that nothing waits. */
function answerInFull(line: NumberedLine, file: string, strict: boolean): Answered | Promise<Answered> {
  if (IDLE.test(line.text) && !line.tooLong) return { text: '', exit: 0 }
  const words = line.tooLong ? undefined : splitLine(line.text.replace(/^\uFEFF/, ''))
  if (words === undefined) return faulty({ found: 'a line without end', accepted: 'one quick command on a line' }, line, file)
  if (!words.ok) return faulty(words.fault, line, file)
  const [name, ...rest] = words.value[0] === 'fettle' ? words.value.slice(1) : words.value
  const command = COMMANDS.find(one => one.name === name)
  if (command === undefined) return faulty(unknownCommand(name ?? ''), line, file)
  const answer = (work: Work) => answerOf({ command, work, words: rest, line, file, strict })
  const known = works.get(command)
  return known === undefined ? loaded(command).then(answer) : answer(known)
}

interface Call {
  readonly command: Description
  readonly work: Work
  readonly words: readonly string[]
  readonly line: NumberedLine
  readonly file: string
  readonly strict: boolean
}

function answerOf({ command, work, words, line, file, strict }: Call): Answered {
  if (work === 'of jobs') return faulty({ found: `${quoted(command.name)}, which is no quick command`, accepted: QUICK }, line, file)
  const options = readOptions(command, words)
  if (!options.ok) return faulty(options.fault, line, file, command.name)
  const { typed, common } = options.value
  const { answer, exit } = work.quick(typed, { working: common['working'] === true, strict: strict || common['strict'] === true })
  return { text: bytesOf(lineText(placed(answer, line, file), { line: line.number, exit }, work.locate)), exit }
}

/** Faults with the line they stand in. */
function placed(answer: Answer, line: NumberedLine, file: string): Answer {
  const { errors } = answer
  if (errors === undefined) return answer
  return { ...answer, errors: errors.map(error => ({ ...error, where: { ...error.where, ...at(line, file) } })) }
}

const QUICK = 'a command that works out one sum, as "torque 155 in-lb"'

type Work = QuickRun | 'of jobs'

const works = new Map<Description, Work>()
/** By the name of the command. */
const plains = new Map<string, PlainCommand>()

async function loaded(command: Description): Promise<Work> {
  const { run } = await command.load()
  const work: Work = 'quick' in run ? (run as QuickRun) : 'of jobs'
  works.set(command, work)
  if (work !== 'of jobs' && work.plain !== undefined) plains.set(command.name, new PlainCommand(work.plain))
  return work
}

function faulty(fault: Fault, line: NumberedLine, file: string, command = ''): Answered {
  const error = { ...fault, where: { ...at(line, file), column: null, path: '' } }
  const document = { format: FORMAT, command, line: line.number, exit: 2, errors: [errorJson(error)] }
  return { text: bytesOf(`${JSON.stringify(document)}\n`), exit: 2 }
}

function at({ number }: NumberedLine, file: string): Pick<Diagnostic['where'], 'file' | 'line'> {
  return { file, line: number }
}

function unknownCommand(name: string): Fault {
  const near = nearest(
    name,
    COMMANDS.map(one => one.name)
  )
  const fault = { found: `the unknown command ${quoted(name)}`, accepted: QUICK }
  return near === undefined ? fault : { ...fault, near }
}

/** A stream of the file, or why there is none. */
async function inputOf(file: string, { input }: Pick<Live, 'input'>): Promise<Live['input'] | Fault> {
  if (file === PIPED) return input
  try {
    const there = await stat(file)
    if (!there.isDirectory()) return filePieces(openSync(file, 'r'))
    return { found: `${quoted(file)}, a folder`, accepted: 'a file of lines' }
  } catch (error) {
    return { found: `${quoted(file)}, ${reasonOf(error)}`, accepted: 'a file of lines that can be read' }
  }
}
