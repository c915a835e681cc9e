import stringWidth from 'fast-string-width'

/** Width of a usual letter in a drawing, in units: on the wide side. */
const LETTER = 6

/** A text that fits into so many units: what is too long ends in an ellipsis. */
export function clipped(text: string, room: number): string {
  const letters = Math.max(1, Math.floor(room / LETTER))
  if (stringWidth(text) <= letters) return text
  let kept = ''
  for (const letter of text) {
    if (stringWidth(kept + letter) > letters - 1) break
    kept += letter
  }
  return `${kept}…`
}
