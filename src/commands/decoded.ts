import { open } from 'node:fs/promises'
import { GREATEST_BYTES } from '../job/yaml-text.ts'

/** The text in the bytes of a job file, or what they are instead. A mark of the encoding at the start is no part of the text. */
export function decoded(bytes: Uint8Array): { readonly text: string } | { readonly found: string } {
  if (bytes.length > GREATEST_BYTES) return { found: 'a file beyond 1 MB' }
  const [first, second] = bytes
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) return { found: 'text in UTF-16' }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) }
  } catch {
    const before = new TextDecoder().decode(bytes).split('\ufffd', 1)[0]!
    return { found: `bytes in line ${before.split('\n').length} that are no UTF-8` }
  }
}

/** No more than it takes to see that a file is too large: a device has no end. */
export async function firstBytes(file: string): Promise<Uint8Array> {
  const handle = await open(file)
  try {
    const parts: Uint8Array[] = []
    for await (const part of handle.createReadStream({ end: GREATEST_BYTES, autoClose: false })) parts.push(part)
    return Buffer.concat(parts)
  } finally {
    await handle.close()
  }
}
