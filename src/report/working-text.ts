import type { ChalkInstance } from 'chalk'
import { SOURCES, type SourceId } from '../formula/source.ts'
import type { WorkingLine } from './answer.ts'

/** The working, one block a line: what it is, the equation, the numbers put in, the result, the source. */
export function workingText(lines: readonly WorkingLine[], ink: ChalkInstance): string {
  const ends = [...new Set(lines.map(({ at }) => at))]
  return ends
    .map(
      end =>
        `${ink.bold(`working (${end})`)}\n${lines
          .filter(({ at }) => at === end)
          .map(lineText)
          .join('\n')}`
    )
    .join('\n\n')
}

function lineText({ symbol, says, equation, putIn, value, unit, source }: WorkingLine): string {
  const { title, label } = SOURCES[source as SourceId]
  const result = `${Number(value.toPrecision(5))} ${unit}`.trim()
  return `  ${says}  [${title} (${label})]\n    ${symbol} = ${equation}\n    ${' '.repeat(symbol.length)} = ${putIn} = ${result}`
}
