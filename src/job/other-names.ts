/** What a trade calls by another name than a job does: what carries and breaks a current by contacts is drawn as a switch. */
const OTHER_NAMES: { readonly [name: string]: string } = {
  relay: 'switch',
  contactor: 'switch',
  isolator: 'switch',
  disconnector: 'switch'
}

/** The field that is meant, where it is one of those that are known. */
export function otherName(name: string, known: readonly string[]): string | undefined {
  const found = Object.hasOwn(OTHER_NAMES, name) ? OTHER_NAMES[name]! : undefined
  return found !== undefined && known.includes(found) ? found : undefined
}
