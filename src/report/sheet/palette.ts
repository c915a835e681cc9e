/** Colours of the sheet, by what they are for; each pair of text and ground has a contrast of 4.5 or more, which a test works out. */
export interface Palette {
  readonly page: string
  readonly card: string
  readonly ink: string
  readonly soft: string
  readonly line: string
  /** Between rows: seen, and no more. */
  readonly hair: string
  readonly fail: string
  readonly 'fail-ground': string
  readonly caution: string
  readonly 'caution-ground': string
  readonly unjudged: string
  readonly 'unjudged-ground': string
  readonly metal: string
  readonly part: string
  readonly stack: string
}

export const LIGHT: Palette = {
  page: '#ffffff',
  card: '#f3f4f6',
  ink: '#14171c',
  soft: '#474e59',
  line: '#6b7280',
  hair: '#c4c8cf',
  fail: '#8f1313',
  'fail-ground': '#fdeaea',
  caution: '#6b4500',
  'caution-ground': '#fdf3dc',
  unjudged: '#1d4480',
  'unjudged-ground': '#e8f0fb',
  metal: '#8a919c',
  part: '#d9dde3',
  stack: '#d99a2b'
}

export const DARK: Palette = {
  page: '#14171c',
  card: '#20242b',
  ink: '#f1f3f5',
  soft: '#b9c0ca',
  line: '#8b93a0',
  hair: '#454c57',
  fail: '#ffb1b1',
  'fail-ground': '#40181a',
  caution: '#ffd58a',
  'caution-ground': '#3a2c0f',
  unjudged: '#b5d2ff',
  'unjudged-ground': '#172a47',
  metal: '#7d8591',
  part: '#3c434d',
  stack: '#a8741c'
}

/** Which colour of text stands on which ground. */
export const PAIRS: readonly (readonly [ink: keyof Palette, ground: keyof Palette])[] = [
  ['ink', 'page'],
  ['soft', 'page'],
  ['ink', 'card'],
  ['soft', 'card'],
  ['fail', 'fail-ground'],
  ['ink', 'fail-ground'],
  ['caution', 'page'],
  ['caution', 'caution-ground'],
  ['ink', 'caution-ground'],
  ['unjudged', 'unjudged-ground'],
  ['ink', 'unjudged-ground']
]
