import type { ChalkInstance } from 'chalk'
import { wrapAnsi } from 'fast-wrap-ansi'
import { SOURCES, type SourceId } from '../formula/source.ts'
import type { WorkingLine } from './answer.ts'

/** The working, one block a line: what it is, the equation, the numbers put in, the result, the source. */
export function workingText(lines: readonly WorkingLine[], width: number, ink: ChalkInstance): string {
  const ends = [...new Set(lines.map(({ at }) => at))]
  return ends
    .map(
      end =>
        `${ink.bold(`working (${end})`)}\n${lines
          .filter(({ at }) => at === end)
          .map(line => lineText(line, width))
          .join('\n')}`
    )
    .join('\n\n')
}

function lineText({ symbol, says, equation, putIn, value, unit, source }: WorkingLine, width: number): string {
  const { title, label } = SOURCES[source as SourceId]
  const result = `${Number(value.toPrecision(5))} ${unit}`.trim()
  const head = wrapAnsi(`${says}  [${title} (${label})]`, width - 2).replaceAll('\n', '\n  ')
  return `  ${head}\n    ${symbol} = ${equation}\n    ${' '.repeat(symbol.length)} = ${putIn} = ${result}`
}
