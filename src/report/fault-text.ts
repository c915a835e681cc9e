import type { Diagnostic, Where } from '../quantity/diagnostic.ts'
import { visible } from '../quantity/quoted.ts'

/** One fault for a reader: place, what was found, what is accepted, the nearest word. */
export function faultText({ where, found, accepted, near, excerpt }: Diagnostic): string {
  const head = visible(`${placeText(where)}error: found ${found}; accepted: ${accepted}`)
  const hint = near === undefined ? [] : [`  did you mean ${near}?`]
  return `${[head, ...(excerpt === undefined ? [] : underlined(where, excerpt)), ...hint].join('\n')}\n`
}

function placeText({ file, line, column, path }: Where): string {
  const place = [file === '' ? '""' : file, line, column].filter(part => part !== null).join(':')
  return [place, path]
    .filter(part => part !== '')
    .map(part => `${part}: `)
    .join('')
}

/** The line it stands on, with the fault underlined. */
function underlined({ line, column }: Where, { text, length }: NonNullable<Diagnostic['excerpt']>): string[] {
  const gutter = `  ${line} | `
  const before = ' '.repeat(Math.max(0, gutter.length + (column ?? 1) - 1))
  return [`${gutter}${text}`, `${before}${'^'.repeat(Math.max(1, length))}`]
}
