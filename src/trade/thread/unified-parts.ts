import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { quoted } from '../../quantity/quoted.ts'
import { THREAD_FORM } from './designation-forms.ts'
import { pipeNamed } from './taper-pipe-named.ts'
import { readUnifiedClass } from './unified-class.ts'
import type { UnifiedSeries } from './unified-series.ts'

/** The old American National series have the sizes and pitches of the unified ones, and old machines are full of them. */
const SERIES: { readonly [word: string]: UnifiedSeries } = {
  UNC: 'UNC',
  UNF: 'UNF',
  UNEF: 'UNEF',
  UNRC: 'UNC',
  UNRF: 'UNF',
  UNREF: 'UNEF',
  NC: 'UNC',
  NF: 'UNF',
  NEF: 'UNEF'
}

const LONGEST = 40
const PARTS =
  /^(?<size>#?\d+[- ]\d+\/\d+|#?\d+\/\d+|#?\d*\.\d+|#?\d+) ?(?:in(?:ch)?\.? ?)?(?:(?:[- x×] ?)(?<tpi>\d+(?:\.\d+)?)(?: ?tpi)?)?(?:[- ]{0,3}(?<series>[a-z]{2,6}))?(?:[- ]{0,3}(?<fit>[1-9][a-z](?: ?\/ ?[1-9][a-z])?))?$/i

/** What a designation says, before anyone knows whether there is such a thread. */
export interface UnifiedParts {
  readonly text: string
  readonly sizeText: string
  readonly tpiCount: number | null
  readonly series: UnifiedSeries | null
  readonly classText: string | null
}

export function unifiedParts(text: string): Outcome<UnifiedParts> {
  const pipe = pipeNamed(text)
  if (pipe !== undefined) return bad(`${quoted(text)}, ${pipe}`, THREAD_FORM)
  const tidied = tidy(text)
  if (/\d,\d/.test(tidied))
    return bad(`a decimal comma in ${quoted(text)}`, 'a decimal point', formed(tidied.replaceAll(/(\d),(?=\d)/g, '$1.')))
  const rightHand = tidied.replace(/[- ]{0,3}LH$/i, '')
  if (rightHand !== tidied)
    return bad(`a left-hand thread in ${quoted(text)}`, 'the same thread right-hand: its sizes are the same', formed(rightHand))
  const groups = tidied.length > LONGEST ? undefined : PARTS.exec(tidied)?.groups
  if (groups === undefined) return bad(`no thread in ${quoted(text)}`, THREAD_FORM)
  const { size, tpi, series, fit } = groups
  if (series !== undefined && SERIES[series.toUpperCase()] === undefined) return unknownSeries(text, series)
  const fitting = readUnifiedClass(fit ?? null)
  if (!fitting.ok) return fitting
  return good({
    text,
    sizeText: size!,
    tpiCount: tpi === undefined ? null : Number(tpi),
    series: series === undefined ? null : SERIES[series.toUpperCase()]!,
    classText: fit?.toUpperCase() ?? null
  })
}

/** A suggestion is worth giving where it has the form of a thread. */
function formed(text: string): string | undefined {
  return text.length <= LONGEST && PARTS.test(text) ? text : undefined
}

/** Fractions of one letter, number signs in words, long dashes and inch marks, as the rest of the reading expects them. */
function tidy(text: string): string {
  return text
    .trim()
    .replace(/(\d)(?=[¼-¾⅐-⅞])/gu, '$1 ')
    .normalize('NFKC')
    .replace(/⁄/gu, '/')
    .replace(/^(?:no\.?|number|size) ?(?=\d)/i, '#')
    .replace(/# /g, '#')
    .replace(/[‐-―−]/gu, '-')
    .replace(/["″”]|''|′′/gu, '')
    .replace(/\s+/g, ' ')
    .replace(/ ?- ?/g, '-')
}

function unknownSeries(text: string, series: string): Outcome<never> {
  return bad(`unknown thread series ${quoted(series)} in ${quoted(text)}`, 'UNC, UNF or UNEF')
}
