import stringWidth from 'fast-string-width'

/** Units that a letter takes at most, by common typefaces without serifs; a bold one takes a fifth more. */
const WIDTHS: readonly (readonly [letters: RegExp, units: number])[] = [
  [/[iIjl.,:;'|!()[\] ]/, 4.5],
  [/[mMW@%—…↓]/, 11.5],
  [/[A-ZwÄÖÜΩ]/, 8.6],
  [/[\d+=<>±]/, 7.1]
]
const OTHER = 7
const BOLD = 1.2

interface Room {
  readonly room: number
  readonly bold: boolean
}

export function widthOf(text: string, bold: boolean): number {
  return [...text].reduce((sum, letter) => sum + unitsOf(letter), 0) * (bold ? BOLD : 1)
}

/** What no table of ours knows is as wide as its cells in a terminal say. */
function unitsOf(letter: string): number {
  return WIDTHS.find(([letters]) => letters.test(letter))?.[1] ?? OTHER * Math.max(1, stringWidth(letter))
}

/** A text that fits into so many units: what is too long ends in an ellipsis. */
export function clipped(text: string, { room, bold }: Room): string {
  if (widthOf(text, bold) <= room) return text
  let kept = ''
  for (const letter of text) {
    if (widthOf(`${kept}${letter}…`, bold) > room) break
    kept += letter
  }
  return `${kept}…`
}

/** The same over several lines: only a word that is too long for a line is cut. */
export function clippedLines(text: string, { room, bold }: Room): readonly string[] {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    const last = lines.at(-1)
    if (last === undefined || widthOf(`${last} ${word}`, bold) > room) lines.push(word)
    else lines[lines.length - 1] = `${last} ${word}`
  }
  return lines.map(one => clipped(one, { room, bold }))
}
