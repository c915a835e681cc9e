import type { Description, Row } from '../../src/commands/describe.ts'
import { COMMANDS } from '../../src/commands/list.ts'
import { outputOf, wordsOf } from './example-output.ts'
import { code, generatedHead, pageText, tableText } from './markdown.ts'

const ABOUT = `A quantity carries its unit and may carry bounds: [how they are written](quantities.md). What a command prints, and what its exit code means, is told under [results](results.md). The examples below were run as they stand, on a page of 80 columns.`

/** More than this of an output helps nobody on a page; of a document for a program still less. */
const MOST_LINES = 80
const MOST_OF_JSON = 30

/** Every command: its words, and its examples with what they print. */
export async function commandsPage(): Promise<string> {
  const contents = COMMANDS.map(({ name, summary }) => `- [${name}](#${name}): ${summary}`).join('\n')
  const sections = []
  for (const command of COMMANDS) sections.push(await commandText(command))
  return pageText([
    generatedHead('Commands', '`src/commands/`'),
    ABOUT,
    contents,
    '## for every command',
    await shown('--help'),
    await shown('schema --help'),
    ...sections
  ])
}

async function commandText({ name, summary, rows, examples }: Description): Promise<string> {
  const outputs = []
  for (const example of examples) outputs.push(await shown(example))
  const table =
    Object.keys(rows).length === 0 ? '' : tableText(['word', 'what', 'takes', 'when left out'], Object.entries(rows).map(rowText))
  return [`## ${name}`, `${summary[0]!.toUpperCase()}${summary.slice(1)}.`, table, ...outputs].filter(part => part !== '').join('\n\n')
}

function rowText([name, row]: readonly [string, Row]): readonly string[] {
  const option = [...(row.short === undefined ? [] : [`-${row.short}`]), `--${name}`].map(code).join(', ')
  return [row.argument === true ? code(row.value) : option, row.says, takesText(row), leftOutText(row)]
}

function takesText({ takes, kind, of, many, value }: Row): string {
  const several = many === undefined ? '' : many === 'comma' ? ', several after commas or by repeating it' : ', several'
  switch (takes) {
    case 'quantity':
      return `[${kind}](quantities.md#${kind})${several}`
    case 'span':
      return `two ends of [${kind}](quantities.md#${kind})${several}`
    case 'choice':
      return `${of!.map(code).join(', ')}${several}`
    case 'word':
      return `${code(value)}${several}`
    case 'flag':
      return ''
  }
}

function leftOutText({ required, default: text, why }: Row): string {
  if (required === true) return 'an error'
  return text === undefined ? '' : `${code(text)}: ${why}`
}

async function shown(example: string): Promise<string> {
  const { exit, out, err } = await outputOf(wordsOf(example))
  const ending = exit === 0 ? '' : `\n\nIt ends with ${exit}.`
  return `\`\`\`console\n$ fettle ${example}\n${cut(`${out}${err}`.trimEnd())}\n\`\`\`${ending}`
}

function cut(text: string): string {
  const lines = text.split('\n').map(line => line.trimEnd())
  const most = text.startsWith('{') ? MOST_OF_JSON : MOST_LINES
  return lines.length <= most ? lines.join('\n') : [...lines.slice(0, most), '… and more'].join('\n')
}
