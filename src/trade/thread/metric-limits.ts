import { fact } from '../../formula/formula.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import type { BasicSizes } from './basic.ts'
import type { Limits, Span } from './limits.ts'
import type { HalfClass, MetricClass } from './metric-class.ts'
import type { MetricThread } from './thread.ts'
import { deviationMm, type Side, type Toleranced, toleranceMm, toleranceSource } from './tolerance.ts'

type RoundedBasics = Pick<BasicSizes, 'pitchDiameterMm' | 'minorDiameterMm'>

/** Limits of size by ISO 965-1: the basic diameter rounded to 0.001 mm, then the tables. */
export function metricLimits(x: {
  readonly thread: MetricThread
  readonly toleranceClass: MetricClass
  readonly basics: RoundedBasics
}): Limits {
  const { thread, basics } = x
  const { majorMm } = thread
  const { internal, external } = x.toleranceClass
  return {
    internal: {
      minor: holeSpan(thread, 'crest', internal, basics.minorDiameterMm),
      pitchDiameter: holeSpan(thread, 'pitch', internal, basics.pitchDiameterMm),
      major: { minMm: toMicron(majorMm + deviation(thread, internal)) },
      source: toleranceSource(internal.position, internal.pitchGrade)
    },
    external: {
      major: screwSpan(thread, 'crest', external, majorMm),
      pitchDiameter: screwSpan(thread, 'pitch', external, basics.pitchDiameterMm),
      source: toleranceSource(external.position, external.pitchGrade)
    }
  }
}

/** From the basic size lifted by the deviation, upward by the tolerance. */
function holeSpan(thread: MetricThread, on: Toleranced, half: HalfClass, basicMm: number): Span {
  const minMm = toMicron(toMicron(basicMm) + deviation(thread, half))
  const maxMm = toMicron(minMm + tolerance(thread, 'internal', on, half))
  return recorded(on === 'pitch' ? 'pitch diameter' : 'minor diameter', on === 'pitch' ? 'D2' : 'D1', half, basicMm, { minMm, maxMm })
}

/** From the basic size lowered by the deviation, downward by the tolerance. */
function screwSpan(thread: MetricThread, on: Toleranced, half: HalfClass, basicMm: number): Span {
  const maxMm = toMicron(toMicron(basicMm) + deviation(thread, half))
  const minMm = toMicron(maxMm - tolerance(thread, 'external', on, half))
  return recorded(on === 'pitch' ? 'pitch diameter' : 'major diameter', on === 'pitch' ? 'd2' : 'd', half, basicMm, { minMm, maxMm })
}

/** Nearest 0.001 mm: what the standard prints. */
function toMicron(mm: number): number {
  return Math.round(mm * 1000) / 1000
}

function deviation(thread: MetricThread, half: HalfClass): number {
  return deviationMm(thread, half.position) ?? missing(thread, half)
}

function tolerance(thread: MetricThread, side: Side, on: Toleranced, half: HalfClass): number {
  return toleranceMm(thread, side, on, on === 'pitch' ? half.pitchGrade : half.crestGrade) ?? missing(thread, half)
}

function missing(thread: MetricThread, half: HalfClass): never {
  throw new NoAnswer(`ISO 965-1 has no class ${half.name} for ${thread.name}`, 'take a class that the standard has at this pitch')
}

/** Leaves a line for each limit in the working. */
function recorded(says: string, symbol: string, half: HalfClass, basicMm: number, span: Span): Span {
  const source = SOURCES[toleranceSource(half.position, half.pitchGrade)]
  for (const [end, valueMm] of [
    ['least', span.minMm],
    ['greatest', span.maxMm]
  ] as const) {
    const facts = fact('limitMm', { says: `${says}, ${half.name}, ${end}`, symbol: `${symbol} ${end}`, source })
    recordStep(facts, valueMm, () => offBasic(toMicron(basicMm), valueMm))
  }
  return span
}

function offBasic(basicMm: number, valueMm: number): string {
  return `${basicMm} ${valueMm < basicMm ? '-' : '+'} ${toMicron(Math.abs(valueMm - basicMm))}`
}
