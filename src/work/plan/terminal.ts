/** What a wire is crimped to, among what stands under a shoulder. A plug washer is none. */
export function isTerminal(what: string): boolean {
  return /\b(terminal|lug|eyelet)s?\b/i.test(what)
}
