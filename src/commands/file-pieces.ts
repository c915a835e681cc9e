import { closeSync, readSync } from 'node:fs'

/** Far more than a line, and little to hold. */
const PIECE = 1 << 16

/** What a file holds, piece by piece. Read at once: it is there, and a stream of it takes longer to begin than a thousand lines. */
export async function* filePieces(descriptor: number): AsyncGenerator<Uint8Array> {
  try {
    for (let piece = nextOf(descriptor); piece.length > 0; piece = nextOf(descriptor)) yield piece
  } finally {
    closeSync(descriptor)
  }
}

function nextOf(descriptor: number): Uint8Array {
  const piece = Buffer.allocUnsafe(PIECE)
  return piece.subarray(0, readSync(descriptor, piece))
}
