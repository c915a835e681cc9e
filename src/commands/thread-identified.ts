import type { Given } from '../formula/given.ts'
import { NoAnswer } from '../formula/no-answer.ts'
import { good, type Outcome } from '../quantity/fault.ts'
import { parseRatio } from '../quantity/parse-ratio.ts'
import { type Finding, noAnswer } from '../rules/finding.ts'
import { asked } from '../rules/rule.ts'
import { tapered } from '../rules/thread/tapered.ts'
import { type Identification, identify } from '../trade/thread/identify.ts'
import { candidates } from '../trade/thread/identify-candidates.ts'
import type { Side } from '../trade/thread/identify-crest.ts'
import { type Asked, sum } from './sum.ts'
import { candidateTable, tellTable } from './thread-candidates.ts'

/** The steeper end of what was measured: growth of the diameter over the length. */
export function readTaper(text: string): Outcome<number> {
  const ratio = parseRatio(text)
  if (!ratio.ok) return ratio
  const { low, high } = ratio.value
  return good(Math.abs(low) > Math.abs(high) ? low : high)
}

interface MeasuredWords {
  readonly measured: Given
  readonly internal: boolean
  readonly pitch: Given | null
  readonly taper: number | null
}

/** Which thread was measured, best first. */
export function identified(words: MeasuredWords): Asked {
  const side = words.internal ? 'internal' : 'external'
  const found = identification(words, side)
  return sum({
    title: words.internal ? 'a hole, by its minor diameter' : 'a screw, by its major diameter',
    tree: () => ({}),
    calculation: () => ({}),
    results: {},
    tables: () => ({
      candidates: candidateTable(found, side),
      ...(found.kind === 'parallel' && found.tells.length > 0 ? { tells: tellTable(found) } : {})
    }),
    findings: () => findingsOf(found, words.taper),
    cautions: () => (found.kind === 'parallel' ? found.cautions : [])
  })
}

/** Nothing that fits is an answer too: no candidates, and why. */
export type Found = Identification | { readonly kind: 'nothing'; readonly error: NoAnswer }

function identification({ measured, pitch, taper }: MeasuredWords, side: Side): Found {
  try {
    return identify({
      measuredMm: measured.value,
      errorMm: errorOf(measured),
      pitchMm: pitch?.value,
      pitchErrorMm: pitch === null ? undefined : errorOf(pitch),
      taperRatio: taper ?? undefined,
      side,
      candidates: candidates()
    })
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    return { kind: 'nothing', error }
  }
}

/** Bounds are the error of the reading; without any, that of a calliper is taken. */
function errorOf({ value, low, high }: Given): number | undefined {
  return low < high ? Math.max(high - value, value - low) : undefined
}

function findingsOf(found: Found, taperRatio: number | null): readonly Finding[] {
  return [
    ...(taperRatio === null ? [] : [asked(tapered, { taperRatio, tapered: found.kind === 'tapered' ? found : null })]),
    ...(found.kind === 'nothing' ? [noAnswer('thread', found.error)] : [])
  ]
}
