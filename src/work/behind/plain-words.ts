/** A text of the job, to be compared as a whole: small letters, single spaces, no stop and no hyphen. */
export function plainWords(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s\-‐‑–—,;:.!()/]+/g, ' ')
    .trim()
}

/** The same, cut where a stop, a bracket or a dash parts what is said: "oxygen, free of oil" is not free of oxygen; 14.5 is one figure. */
export function clausesOf(text: string): readonly string[] {
  return text
    .normalize('NFKC')
    .split(/(?<!\d)[,.]|[,.](?!\d)|[–—;:!?()/\n]|\s[-‐‑]+\s/u)
    .map(plainWords)
}
