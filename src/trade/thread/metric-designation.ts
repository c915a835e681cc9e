import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { quoted } from '../../quantity/quoted.ts'
import { METRIC_FORM } from './designation-forms.ts'
import { readMetricClass } from './metric-class.ts'
import { pitchesMm, type SeriesSize, seriesSize, seriesSizes } from './pitch-series.ts'
import type { MetricThread } from './thread.ts'

const NUMBER = '\\d*[.,]?\\d+'
const SIZE = new RegExp(`^m ?(${NUMBER})(?: ?[x×*] ?(${NUMBER}))?(.*)$`, 'i')
const LONGEST = 40

/** Reads `M12`, `M12x1.5`, `m 12 × 1.5`, `M12*1.5-6H/6g`: coarse pitch when none is given. */
export function readMetric(text: string): Outcome<MetricThread> {
  const words = text.trim().replace(/\s+/g, ' ')
  const parts = words.length > LONGEST ? null : SIZE.exec(words)
  if (parts === null) return bad(`${quoted(text)} is no metric thread`, METRIC_FORM)
  const [, major = '', pitch, rest = ''] = parts
  const written = `M${major}${pitch === undefined ? '' : `x${pitch}`}`
  if (written.includes(',')) return bad(`decimal comma in ${quoted(text)}`, 'a decimal point, as M12x1.5', written.replaceAll(',', '.'))
  const size = seriesSize(Number(major))
  if (size === undefined) return bad(`no M${Number(major)} in the pitch series known here`, ...nearSizes(Number(major)))
  const thread = threadOf(size, pitch === undefined ? size.coarseMm : Number(pitch))
  return thread.ok ? withClass(thread.value, rest) : thread
}

function threadOf(size: SeriesSize, pitchMm: number | null): Outcome<MetricThread> {
  const { majorMm, coarseMm } = size
  const known = pitchesMm(size)
  const accepted = `M${majorMm} with pitch ${known.map(pitch => `${pitch}${pitch === coarseMm ? ' (coarse)' : ''}`).join(', ')} mm`
  if (pitchMm === null) return bad(`M${majorMm} has no coarse pitch`, accepted, nameOf(size))
  if (!known.includes(pitchMm)) {
    const near = known.reduce((a, b) => (Math.abs(b - pitchMm) < Math.abs(a - pitchMm) ? b : a))
    return bad(`M${majorMm} has no pitch of ${pitchMm} mm in the pitch series known here`, accepted, `M${majorMm}x${near}`)
  }
  return good(seriesThread(size, pitchMm))
}

/** A thread of the series, without a class. */
export function seriesThread({ majorMm, coarseMm }: SeriesSize, pitchMm: number): MetricThread {
  return {
    system: 'metric',
    name: `M${majorMm}x${pitchMm}`,
    majorMm,
    pitchMm,
    series: pitchMm === coarseMm ? 'coarse' : 'fine',
    classText: null
  }
}

function withClass(thread: MetricThread, rest: string): Outcome<MetricThread> {
  if (rest === '') return good(thread)
  if (/^ ?[x×*]/i.test(rest)) return bad(`no pitch in ${quoted(rest.trim())} after M${thread.majorMm}`, METRIC_FORM)
  const classText = /^(?: ?- ?| )([^ ].*)$/.exec(rest)?.[1]
  if (classText === undefined) return bad(`${quoted(rest.trim())} after ${thread.name}`, METRIC_FORM)
  if (/^\d*\.?\d+$/.test(classText)) return pitchWithoutX(thread, classText)
  const read = readMetricClass(classText, thread)
  return read.ok ? good({ ...thread, classText }) : read
}

/** `M12-1.5` is met in the shop, but a hyphen stands before a class. */
function pitchWithoutX({ majorMm }: MetricThread, pitch: string): Outcome<MetricThread> {
  const meant = readMetric(`M${majorMm}x${pitch}`)
  return bad(
    `${quoted(pitch)} after M${majorMm}, where a tolerance class would stand`,
    METRIC_FORM,
    meant.ok ? meant.value.name : undefined
  )
}

function nearSizes(majorMm: number): [accepted: string, near: string] {
  const off = (size: SeriesSize) => Math.abs(size.majorMm - majorMm)
  const nearest = seriesSizes()
    .toSorted((a, b) => off(a) - off(b))
    .slice(0, 3)
  const names = nearest.map(nameOf)
  return [`${names.join(', ')} or another of M1.6 to M36`, names[0]!]
}

/** The shortest name that reads as a thread of this size. */
function nameOf(size: SeriesSize): string {
  return `M${size.majorMm}${size.coarseMm === null ? `x${size.finesMm[0]!}` : ''}`
}
