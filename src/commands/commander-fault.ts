import type { CommanderError } from 'commander'
import { type Diagnostic, onCommandLine } from '../quantity/diagnostic.ts'
import { nearest } from '../quantity/near.ts'
import { quoted } from '../quantity/quoted.ts'
import { UNITS } from '../quantity/unit-system.ts'
import type { Description } from './describe.ts'
import { isGivenTwice } from './given-twice-error.ts'
import { optionNames } from './read-options.ts'

/** What the option parser refused, as a fault of ours. */
export function faultOfCommander(error: CommanderError, commands: readonly Description[], command: Description | undefined): Diagnostic {
  if (isGivenTwice(error)) return { ...error.fault, where: onCommandLine(error.option) }
  const { code, message } = error
  const word = /'([^']*)'/.exec(message)?.[1] ?? ''
  const options = optionNames(command?.rows ?? {})
  const fault = { found: quoted(word), where: onCommandLine(command?.name ?? 'fettle') }
  if (code === 'commander.unknownCommand')
    return known(
      { ...fault, accepted: 'one of the commands that "fettle --help" lists' },
      word,
      commands.map(({ name }) => name)
    )
  if (code === 'commander.unknownOption' && options.includes(word))
    return { ...fault, found: `${quoted(word)} before the command`, accepted: `options after it, as "fettle torque 155 in-lb ${word}"` }
  if (code === 'commander.unknownOption')
    return known(
      { ...fault, accepted: `the options that "${['fettle', command?.name ?? [], '--help'].flat().join(' ')}" lists` },
      word,
      options
    )
  if (code === 'commander.optionMissingArgument')
    return { ...fault, found: `${word.split(' ')[0]} without a value`, accepted: word, where: onCommandLine(word.split(' ')[0]!) }
  if (code === 'commander.missingArgument')
    return {
      ...fault,
      found: 'nothing',
      accepted: `<${word}>, as "fettle ${command?.examples[0] ?? ''}"`,
      where: onCommandLine(`<${word}>`)
    }
  if (code === 'commander.excessArguments')
    return { ...fault, found: 'a word too many', accepted: `as "fettle ${command?.examples[0] ?? ''}"` }
  return { ...fault, found: quoted(message.replace(/^error: /, '')), accepted: `as "fettle ${command?.name ?? ''} --help" shows` }
}

/** What stands behind `--units` and is none. */
export function unknownUnits(units: string): Diagnostic {
  return known({ found: quoted(units), accepted: UNITS.join(', '), where: onCommandLine('--units') }, units, UNITS)
}

function known(fault: Omit<Diagnostic, 'near'>, word: string, words: readonly string[]): Diagnostic {
  const near = nearest(word, words)
  return near === undefined ? fault : { ...fault, near }
}
