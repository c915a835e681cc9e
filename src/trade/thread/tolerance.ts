import type { SourceId } from '../../formula/source.ts'
import { BY_PITCH, BY_RANGE, CREST_GRADES, PITCH_GRADES, RANGE_ENDS_MM } from './tolerance-tables.ts'

export type Side = 'internal' | 'external'
/** The crest is the minor diameter of an internal thread, the major diameter of an external one. */
export type Toleranced = 'pitch' | 'crest'
export type Grade = (typeof PITCH_GRADES)[Side][number]
export type Position = 'G' | 'H' | 'e' | 'f' | 'g' | 'h'

interface Size {
  readonly majorMm: number
  readonly pitchMm: number
}

/** ISO 965-1 tolerance of one diameter; undefined where the standard has none. */
export function toleranceMm(size: Size, side: Side, on: Toleranced, grade: Grade): number | undefined {
  return inMm(cellsFor(size, side, on)[gradeNames(side, on).indexOf(grade)])
}

/** The grades that ISO 965-1 has for this size. */
export function gradesFor(size: Size, side: Side, on: Toleranced): readonly Grade[] {
  const cells = cellsFor(size, side, on)
  return gradeNames(side, on).filter((_, i) => typeof cells[i] === 'number')
}

/** Fundamental deviation: how far the near limit stands off the basic profile, plus for a hole, minus for a screw. */
export function deviationMm({ pitchMm }: Pick<Size, 'pitchMm'>, position: Position): number | undefined {
  const row = BY_PITCH.find(([pitch]) => pitch === pitchMm)
  if (row === undefined) return undefined
  const [, g, f, e] = row
  const umOf = { H: 0, h: 0, G: g, g: -g, f: f && -f, e: e && -e } as const satisfies Record<Position, number | null>
  return inMm(umOf[position])
}

const POSITIONS = { internal: ['G', 'H'], external: ['e', 'f', 'g', 'h'] } as const

/** The positions that ISO 965-1 has at this pitch. */
export function positionsFor(size: Pick<Size, 'pitchMm'>, side: Side): readonly Position[] {
  return POSITIONS[side].filter(position => deviationMm(size, position) !== undefined)
}

/** The longest engagement of groups S and N; undefined where the standard has no row. */
export function groupEndsMm(size: Size): { readonly shortToMm: number; readonly normalToMm: number } | undefined {
  const row = rangeRow(size)
  return row && { shortToMm: row[4], normalToMm: row[5] }
}

/** Position f and the pitch-diameter grades 3 and 9 of a screw were not seen reprinted. */
export function toleranceSource(position: Position, pitchGrade: Grade): SourceId {
  return position === 'f' || pitchGrade === '3' || pitchGrade === '9' ? 'iso-965-1-memory' : 'iso-965-1'
}

function gradeNames(side: Side, on: Toleranced): readonly Grade[] {
  return on === 'pitch' ? PITCH_GRADES[side] : CREST_GRADES[side]
}

function cellsFor(size: Size, side: Side, on: Toleranced): readonly (number | null)[] {
  if (on === 'pitch') return rangeRow(size)?.[side === 'external' ? 2 : 3] ?? []
  return BY_PITCH.find(([pitch]) => pitch === size.pitchMm)?.[side === 'internal' ? 4 : 5] ?? []
}

function rangeRow({ majorMm, pitchMm }: Size) {
  const [from, ...ends] = RANGE_ENDS_MM
  const end = ends.find(to => majorMm > from && majorMm <= to)
  return BY_RANGE.find(([toMm, pitch]) => toMm === end && pitch === pitchMm)
}

function inMm(um: number | null | undefined): number | undefined {
  return typeof um === 'number' ? um / 1000 : undefined
}
