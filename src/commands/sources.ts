import { choice, describe, word } from './describe.ts'

export const sources = describe({
  name: 'sources',
  summary: 'every source with its label, and what rests on it',
  rows: {
    word: word('WORD', 'sources alone that have this in their id or title', { argument: true }),
    label: choice(['read', 'read-secondary', 'memory', 'common practice'], 'sources alone that were seen in this way')
  },
  examples: ['sources iso-965', 'sources battery --label memory'],
  load: () => import('./sources.run.ts')
})
