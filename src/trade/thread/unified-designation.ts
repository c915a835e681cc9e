import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { quoted } from '../../quantity/quoted.ts'
import { type UnifiedParts, unifiedParts } from './unified-parts.ts'
import { type UnifiedThread, unifiedThreads } from './unified-series.ts'
import { nearestSize, sizesNamed, UNIFIED_SIZES } from './unified-size.ts'

/** A designation as people write it: `3/8-24`, `#10-32 UNF`, `.375-24`, `1 1/8-12 UNF`, `1/4-20 UNC-2B`. */
export function readUnified(text: string): Outcome<UnifiedThread> {
  const written = unifiedParts(text)
  return written.ok ? threadOf(written.value) : written
}

function threadOf(written: UnifiedParts): Outcome<UnifiedThread> {
  const { tpiCount, series, classText, sizeText } = written
  const sizes = sizesNamed(sizeText)
  if (sizes.length === 0) return unknownSize(written)
  const ofSize = unifiedThreads().filter(({ size }) => sizes.includes(size))
  const ofPitch = ofSize.filter(each => tpiCount === null || each.tpiCount === tpiCount)
  const found = ofPitch.filter(each => series === null || each.series === series)
  if (tpiCount === null && series === null) return bad(`no pitch in ${quoted(written.text)}`, namesOf(ofSize))
  if (found.length === 1) return good({ ...found[0]!, classText })
  if (found.length > 1) return bad(`two threads for ${quoted(written.text)}`, namesOf(found))
  return ofPitch.length === 0 ? wrongPitch(written, ofSize) : wrongSeries(written, ofPitch, ofSize)
}

function unknownSize({ sizeText, text }: UnifiedParts): Outcome<never> {
  return bad(`no unified size ${quoted(sizeText)} in ${quoted(text)}`, `one of ${UNIFIED_SIZES.join(', ')}`, nearestSize(sizeText))
}

/** Nearest by ratio, so that 14 lies between 13 and 16 as a screw in the hand would feel it. */
function wrongPitch({ text, tpiCount, series }: UnifiedParts, ofSize: readonly UnifiedThread[]): Outcome<never> {
  const off = (each: UnifiedThread) => Math.abs(Math.log(each.tpiCount / tpiCount!))
  const wanted = ofSize.filter(each => each.series === series)
  const near = (wanted.length > 0 ? wanted : ofSize).reduce((a, b) => (off(b) < off(a) ? b : a))
  return bad(`no thread with ${tpiCount} to the inch in ${quoted(text)}`, namesOf(ofSize), near.name)
}

function wrongSeries({ text, series }: UnifiedParts, ofPitch: readonly UnifiedThread[], ofSize: readonly UnifiedThread[]): Outcome<never> {
  const meant = ofPitch[0]!
  return bad(`${quoted(text)} is no ${series} thread: ${meant.size}-${meant.tpiCount} is ${meant.series}`, namesOf(ofSize), meant.name)
}

function namesOf(threads: readonly UnifiedThread[]): string {
  const names = threads.map(({ name }) => name)
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`
}
