import { bad, type Fault, good, type Outcome } from '../../quantity/fault.ts'
import { quoted } from '../../quantity/quoted.ts'
import type { MetricThread } from './thread.ts'
import { type Grade, gradesFor, type Position, positionsFor, type Side, type Toleranced } from './tolerance.ts'

/** One half of a class: `6H`, `4H5H`, `6g`, `5g6g` (pitch diameter first, then the crest). */
export interface HalfClass {
  readonly name: string
  readonly pitchGrade: Grade
  readonly crestGrade: Grade
  readonly position: Position
  /** Why it was taken, where nobody gave it. */
  readonly assumed: string | null
}

export interface MetricClass {
  readonly system: 'metric'
  readonly internal: HalfClass
  readonly external: HalfClass
}

const FORM = 'a class as "6H/6g", "6H" (internal), "6g" (external) or "5g6g" (grade of the pitch diameter, then of the crest)'

/** Reads `6H/6g`, `6H` or `6g` for one thread; a half that is not given, or no text at all, takes the default. */
export function readMetricClass(text: string | null, thread: MetricThread): Outcome<MetricClass> {
  const halves = text === null ? [] : text.trim().split(/ ?\/ ?/)
  const found = new Map<Side, HalfClass>()
  for (const half of halves) {
    const read = readHalf(half, thread)
    if (!read.ok) return read
    const { side, halfClass } = read.value
    if (found.has(side)) return bad(`two ${side} classes in ${quoted(text ?? '')}`, FORM)
    found.set(side, halfClass)
  }
  const [internal, external] = [
    found.get('internal') ?? defaultHalf('internal', thread),
    found.get('external') ?? defaultHalf('external', thread)
  ]
  return good({ system: 'metric', internal, external })
}

function readHalf(text: string, thread: MetricThread): Outcome<{ readonly side: Side; readonly halfClass: HalfClass }> {
  const parts = /^([0-9])([A-Za-z])(?:([0-9])([A-Za-z]))?$/.exec(text)
  if (parts === null) return bad(`${quoted(text)} is no tolerance class`, FORM)
  const [, pitchGrade = '', position = '', crestGrade = pitchGrade, crestPosition = position] = parts
  const side = position === position.toUpperCase() ? 'internal' : 'external'
  if (crestPosition !== position) {
    return bad(
      `two positions, ${position} and ${crestPosition}, in ${quoted(text)}`,
      FORM,
      `${pitchGrade}${position}${crestGrade}${position}`
    )
  }
  const fault =
    positionFault(thread, side, position) ??
    gradeFault(thread, side, 'pitch', `${pitchGrade}${position}`) ??
    gradeFault(thread, side, 'crest', `${crestGrade}${position}`)
  if (fault !== undefined) return { ok: false, fault }
  const grades = { pitchGrade: pitchGrade as Grade, crestGrade: crestGrade as Grade }
  return good({ side, halfClass: halfClass(grades, position as Position, null) })
}

function positionFault(thread: MetricThread, side: Side, position: string): Fault | undefined {
  const known: readonly string[] = positionsFor(thread, side)
  if (known.includes(position)) return undefined
  return {
    found: `ISO 965-1 has no position ${position} for the ${side} thread ${thread.name}`,
    accepted: `position ${known.join(', ')}${side === 'internal' ? ' (small letters are external)' : ' (capitals are internal)'}`
  }
}

const DIAMETERS = {
  internal: { pitch: 'pitch diameter', crest: 'minor diameter' },
  external: { pitch: 'pitch diameter', crest: 'major diameter' }
} as const satisfies Record<Side, Record<Toleranced, string>>

function gradeFault(thread: MetricThread, side: Side, on: Toleranced, [grade = '', position = '']: string): Fault | undefined {
  const known: readonly string[] = gradesFor(thread, side, on)
  if (known.includes(grade)) return undefined
  return {
    found: `ISO 965-1 has no grade ${grade} for the ${DIAMETERS[side][on]} of the ${side} thread ${thread.name}`,
    accepted: `grade ${known.join(', ')}`,
    near: `${nearestGrade(thread, side, grade)}${position}`
  }
}

/** 6H and 6g are the usual fit; a few of the finest pitches have no grade 6 for the hole. */
function defaultHalf(side: Side, thread: MetricThread): HalfClass {
  const grade = nearestGrade(thread, side, '6')
  const usual = side === 'internal' ? '6H' : '6g'
  const why = grade === '6' ? `usual class ${usual}` : `ISO 965-1 has no ${usual} for ${thread.name}: the widest it has up to grade 6`
  return halfClass({ pitchGrade: grade, crestGrade: grade }, side === 'internal' ? 'H' : 'g', why)
}

/** Of the grades that serve both diameters the nearest. */
function nearestGrade(thread: MetricThread, side: Side, grade: string): Grade {
  const crest = gradesFor(thread, side, 'crest')
  const both = gradesFor(thread, side, 'pitch').filter(known => crest.includes(known))
  return both.reduce((a, b) => (Math.abs(Number(b) - Number(grade)) < Math.abs(Number(a) - Number(grade)) ? b : a))
}

function halfClass(grades: Pick<HalfClass, 'pitchGrade' | 'crestGrade'>, position: Position, assumed: string | null): HalfClass {
  const { pitchGrade, crestGrade } = grades
  const name = pitchGrade === crestGrade ? `${pitchGrade}${position}` : `${pitchGrade}${position}${crestGrade}${position}`
  return { name, ...grades, position, assumed }
}
