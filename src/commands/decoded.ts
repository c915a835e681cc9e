import { GREATEST_BYTES } from '../job/form-limits.ts'

/** What the bytes of a job file are instead of text, and the line of the first that shows it. */
export interface Undecoded {
  readonly found: string
  readonly line: number | null
}

/** The text in the bytes of a job file, or what they are instead. A mark of the encoding at the start is no part of the text. */
export function decoded(bytes: Uint8Array): { readonly text: string } | Undecoded {
  if (bytes.length > GREATEST_BYTES) return { found: 'a file beyond 1 MB', line: null }
  if (isWide(bytes)) return { found: 'text in UTF-16', line: 1 }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) }
  } catch {
    const before = new TextDecoder().decode(bytes).split('\ufffd', 1)[0]!
    return { found: 'bytes that are no UTF-8', line: before.split('\n').length }
  }
}

/** Two bytes a letter show in the mark at the start, or in the empty half of the first letter. */
function isWide([first, second]: Uint8Array): boolean {
  return (first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff) || (first === 0) !== (second === 0)
}

/** No more bytes than it takes to see that a file is too large: a device has no end. */
export async function firstOf(input: AsyncIterable<string | Uint8Array>): Promise<Uint8Array> {
  const parts: Uint8Array[] = []
  let bytes = 0
  for await (const part of input) {
    parts.push(typeof part === 'string' ? Buffer.from(part) : part)
    bytes += part.length
    if (bytes > GREATEST_BYTES) break
  }
  return Buffer.concat(parts)
}
