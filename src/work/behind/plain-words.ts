/** A text of the job, to be compared as a whole: small letters, single spaces, no stop and no hyphen. */
export function plainWords(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s\-‐‑–—,;:.!()/]+/g, ' ')
    .trim()
}
