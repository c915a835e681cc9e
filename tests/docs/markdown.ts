/** The first lines of a page that no hand may touch. */
export function generatedHead(title: string, from: string): string {
  return `# ${title}\n\n*Generated: do not edit. It is read off ${from}; \`npm run docs\` writes it anew.*`
}

/** A table; a column that is empty all the way down is left out. */
export function tableText(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  const kept = headings.map((_, i) => i).filter(i => rows.some(row => row[i] !== ''))
  const line = (cells: readonly string[]) => `| ${kept.map(i => cells[i]!.replaceAll('|', '\\|').replaceAll('\n', ' ')).join(' | ')} |`
  return [line(headings), `|${kept.map(() => '---').join('|')}|`, ...rows.map(line)].join('\n')
}

export function code(text: string): string {
  return text === '' ? '' : `\`${text}\``
}

/** Parts of a page, a blank line between them. */
export function pageText(parts: readonly string[]): string {
  return `${parts.filter(part => part !== '').join('\n\n')}\n`
}

/** The anchor that a heading gets: small letters, signs dropped, hyphens for spaces. */
export function anchorOf(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, '')
    .replaceAll(' ', '-')
}
