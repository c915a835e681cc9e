import type { Fault } from '../quantity/fault.ts'

const ACCEPTED = 'text in UTF-8'

/** The text of a file, or how it is written where that is not UTF-8; with the line of the first byte that is none. */
export function decoded(bytes: Uint8Array): { readonly text: string } | { readonly fault: Fault; readonly line: number } {
  const wide = wideName(bytes)
  if (wide !== undefined) return { fault: { found: `a file in ${wide}`, accepted: ACCEPTED }, line: 1 }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) }
  } catch {
    const before = new TextDecoder().decode(bytes).split('\uFFFD', 1)[0]!
    return { fault: { found: 'bytes that are no UTF-8', accepted: ACCEPTED }, line: before.split('\n').length }
  }
}

/** Two bytes a letter show in the mark at the start, or in the empty half of the first letter. */
function wideName([first, second]: Uint8Array): string | undefined {
  if (first === 0xff && second === 0xfe) return 'UTF-16'
  if (first === 0xfe && second === 0xff) return 'UTF-16, the high byte first'
  return first === 0 || second === 0 ? 'UTF-16 or no text at all' : undefined
}
