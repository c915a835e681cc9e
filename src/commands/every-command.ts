/** What every command takes beside its own options: help shows it, a shell completes it. */
export const FOR_EVERY = [
  { word: '--json', says: 'print one JSON document' },
  { word: '--working', says: 'show every formula with its numbers and source' },
  { word: '--strict', says: 'cautions and what could not be judged end with 1 too' },
  { word: '--no-color', says: 'no colour' }
] as const

export const HELP = { word: '--help', says: 'print this help' } as const
