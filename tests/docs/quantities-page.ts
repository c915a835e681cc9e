import { KIND_NAMES, type Kind, rowOf } from '../../src/quantity/kinds.ts'
import type { UnitRow } from '../../src/quantity/unit-row.ts'
import { code, generatedHead, pageText, tableText } from './markdown.ts'

const ABOUT = `One grammar for the command line and for job files. A quantity is a number and its unit, as \`6.8 mm\`, \`5/16 in\`, \`1-1/4 in\`, \`17.5 N·m\` or \`155 in-lb\`; in one word or in quotes.

Bounds go with it:

| written | means |
|---|---|
| \`11.5 mm ± 0.2 mm\` | 11.5 mm, from 11.3 to 11.7 mm; \`+-\` and \`+/-\` read as \`±\` |
| \`11.5 ± 0.2 mm\` | the same: one unit at the end serves both numbers |
| \`45 W ± 5 %\` | the percentage is of the number written: from 42.75 to 47.25 W |
| \`85 % ± 5 %\` | of a percentage too: from 80.75 to 89.25 %; for five points either way write \`80..90 %\` |
| \`45 W +5 % -10 %\` | two sides of their own |
| \`16.0..16.6 mm\` | from end to end, the nominal halfway |
| \`-5 °C ± 2 K\` | a temperature; its bounds are a difference |

A number without a unit, a decimal comma, a unit of another kind, and ends the wrong way round are told, with what would be right. A range that is a span and no tolerance, as that of a wrench, has no nominal.

The first unit of each table is not always the house unit: that is the one in which results and JSON are printed. Symbols are read as they stand: \`mohm\` and \`Mohm\` are nine noughts apart. \`²\` may be written \`2\` or \`^2\`; \`·\` also \`.\`, \`-\`, \`*\` or a space; \`Ω\` is \`ohm\` and \`µ\` is \`u\`.`

/** Every kind of quantity, its house unit, and how each unit may be spelt. */
export function quantitiesPage(): string {
  return pageText([generatedHead('Quantities', '`src/quantity/kinds.ts`'), ABOUT, ...KIND_NAMES.map(kindText)])
}

function kindText(kind: Kind): string {
  const { says, house, example, units, pure, whole, tolerance } = rowOf(kind)
  const head = [
    `A ${says}${house === '' ? '' : `, in ${code(house)}`}; as ${code(example)}.`,
    pure === true ? 'It may stand without a unit.' : '',
    whole === true ? 'Whole numbers alone.' : '',
    tolerance === undefined ? '' : `Its bounds are a [${tolerance}](#${tolerance}).`
  ]
  const rows = Object.entries<UnitRow>(units).map(([label, { as = [], words = [] }]) => [
    code(label),
    [...new Set([...as, ...words])]
      .filter(one => one !== label)
      .map(code)
      .join(', ')
  ])
  const table = rows.length === 0 ? '' : tableText(['unit', 'also written'], rows)
  return [`## ${kind}`, head.filter(part => part !== '').join(' '), table].filter(part => part !== '').join('\n\n')
}
