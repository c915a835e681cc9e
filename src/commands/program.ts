import { Command, CommanderError, Option } from 'commander'
import type { Diagnostic } from '../quantity/diagnostic.ts'
import type { Description, Live, Out, Row, Shell, Typed } from './describe.ts'
import { FOR_EVERY, HELP } from './every-command.ts'
import { GivenTwice } from './given-twice-error.ts'

/** What one call came to. */
export type Called = { readonly exit: number } | { readonly errors: readonly Diagnostic[]; readonly command: string }

export interface Streams {
  readonly out: Out
  readonly err: (text: string) => void
  readonly columns: number
  readonly colour: (wanted: boolean) => boolean
  readonly live?: Live
}

/** Nothing is piped in, and nobody watches. */
const STILL: Live = {
  input: { [Symbol.asyncIterator]: () => ({ next: () => Promise.resolve({ done: true, value: undefined }) }) },
  progress: () => {},
  drained: () => Promise.resolve(),
  stop: new AbortController().signal
}

/** Reads the words of one call and runs the command they name. */
export async function called(
  commands: readonly Description[],
  words: readonly string[],
  version: string,
  streams: Streams
): Promise<Called> {
  let [exit, faults] = [0, [] as readonly Diagnostic[]]
  const program = new Command('fettle')
    .description('Sums for fitting a low-voltage heater or like screw-in part into a casting.')
    .version(version, '--version', 'print the version')
    .helpOption(`-h, ${HELP.word}`, HELP.says)
    .helpCommand(false)
    .exitOverride()
    .configureOutput({
      writeOut: streams.out,
      writeErr: () => {},
      getOutHelpWidth: () => streams.columns,
      getErrHelpWidth: () => streams.columns
    })
    .addHelpText('after', '\nEvery command shows two worked examples with --help.')
  const named = commands.find(({ name }) => name === words.find(word => !word.startsWith('-')))
  // The others, and the options of each, would cost time and are not asked for.
  for (const description of named !== undefined && words[0] === named.name ? [named] : commands) {
    const command = program
      .command(description.name)
      .summary(description.summary)
      .description(description.summary)
      .copyInheritedSettings(program)
    if (description === named)
      dress(command, description).action(async (...all: unknown[]) => {
        const shell = shellOf(command.opts(), streams)
        const units = command.opts<{ readonly units?: string }>().units ?? shell.units
        if (units !== shell.units) {
          const { unknownUnits } = await import('./commander-fault.ts')
          faults = [unknownUnits(units)]
          return
        }
        const { run } = await description.load()
        exit = await run(typedOf(description, command, all), shell)
      })
  }
  try {
    if (words.length === 0) program.outputHelp()
    else await program.parseAsync([...words], { from: 'user' })
    return faults.length > 0 ? { errors: faults, command: named?.name ?? '' } : { exit }
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error
    if (error.exitCode === 0) return { exit: 0 }
    const { faultOfCommander } = await import('./commander-fault.ts')
    return { errors: [faultOfCommander(error, commands, named)], command: named?.name ?? '' }
  }
}

/** The options of one command, and its two worked examples. */
function dress(command: Command, { rows, examples }: Description): Command {
  for (const [name, row] of Object.entries(rows)) {
    if (row.argument) command.argument(row.required ? `<${name}...>` : `[${name}...]`, `${row.says}${wordsOf(row)}`)
    else command.addOption(optionOf(name, row))
  }
  for (const [name, row] of Object.entries(FOR_EVERY)) command.addOption(optionOf(name, row))
  return command
    .helpOption(`-h, ${HELP.word}`, HELP.says)
    .addHelpText('after', `\nExamples:\n${examples.map(example => `  fettle ${example}`).join('\n')}`)
}

/** A longer list of words stands in the text: the column of options would leave no room for it. */
const WIDEST = 20

function optionOf(name: string, row: Row): Option {
  const extra = row.many === 'comma' ? ', …' : ''
  const listed = row.of !== undefined && row.value.length > WIDEST
  const value = listed ? name.toUpperCase() : row.value
  const said = [
    row.says,
    listed ? wordsOf(row) : '',
    row.required ? ' (required)' : '',
    row.default === undefined ? '' : ` (default ${row.default}${row.why === undefined ? '' : `: ${row.why}`})`
  ].join('')
  const option = new Option(
    `${row.short === undefined ? '' : `-${row.short}, `}--${name}${row.takes === 'flag' ? '' : ` <${value}${extra}>`}`,
    said
  )
  if (row.takes === 'flag') return option
  if (row.many !== undefined) return option.argParser((text: string, before: readonly string[] | undefined) => [...(before ?? []), text])
  return option.argParser((text: string, before: string | undefined) => {
    if (before !== undefined) throw new GivenTwice(name, before, text)
    return text
  })
}

function wordsOf({ of }: Row): string {
  return of === undefined ? '' : `: ${of.join(', ')}`
}

function typedOf({ rows }: Description, command: Command, all: readonly unknown[]): Typed {
  const options = command.opts<Record<string, string>>()
  const argument = Object.entries(rows).find(([, row]) => row.argument)
  const several = (all[0] ?? []) as readonly string[]
  const entries = Object.keys(rows).map(name => [name, options[camel(name)]] as const)
  const words =
    argument === undefined || several.length === 0
      ? []
      : [[argument[0], argument[1].many === 'repeat' ? several : several.join(' ')] as const]
  return Object.fromEntries([...entries, ...words])
}

/** As commander names an option: `found-depth` → `foundDepth`. */
function camel(name: string): string {
  return name.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase())
}

function shellOf(
  { json = false, working = false, strict = false, quiet = false, color = true, units }: Record<string, unknown>,
  { out, err, columns, colour, live = STILL }: Streams
): Shell {
  const is = (option: unknown) => option === true
  return {
    out,
    err,
    columns,
    colour: colour(is(color)),
    json: is(json),
    working: is(working),
    strict: is(strict),
    quiet: is(quiet),
    units: units === 'inch' ? 'inch' : 'metric',
    live
  }
}
