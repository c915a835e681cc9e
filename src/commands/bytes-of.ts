const ASCII = /^[\x00-\x7f]*$/

/** A text as the bytes it is written in, each as the character of that number, so that it need not be encoded again. */
export function bytesOf(text: string): string {
  return ASCII.test(text) ? text : Buffer.from(text).toString('latin1')
}
