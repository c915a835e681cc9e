import { FORMULA_FILES, formulasOf } from '../../src/commands/formulas.ts'
import type { Facts } from '../../src/formula/formula.ts'
import { unitOf, wordsOf } from '../../src/quantity/units.ts'
import { cited } from './cited.ts'
import { code, generatedHead, pageText, tableText } from './markdown.ts'

export const ROOMS = Object.keys(FORMULA_FILES)

/** Every formula of one trade room. */
export function formulasPage(room: string): string {
  const about = `Letters stand for numbers in the units of the table; angles are in degrees. Outside its range a formula is refused. \`fettle explain NAME\` prints one in the terminal, \`--working\` puts the numbers in.`
  return pageText([
    generatedHead(`Formulas: ${room}`, `\`src/trade/${room}/\``),
    about,
    ...formulasOf(FORMULA_FILES[room]!).map(formulaText)
  ])
}

function formulaText({ gives, says, symbol, equation, inputs, source }: Facts): string {
  const rows = Object.entries(inputs).map(([name, [letter, least, greatest]]) => [
    code(letter),
    wordsOf(name),
    unitOf(name),
    `${least} to ${greatest}`
  ])
  return [
    `## ${gives}`,
    `${says}${unitOf(gives) === '' ? '' : `, in ${unitOf(gives)}`}`,
    `\`\`\`text\n${symbol} = ${equation}\n\`\`\``,
    tableText(['letter', 'what', 'unit', 'good for'], rows),
    `Source: ${cited(source, '../')}`
  ].join('\n\n')
}
