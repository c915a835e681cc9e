import type { Candidate, Side } from './identify-crest.ts'

/** Which measurement splits two threads. */
export interface Tell {
  readonly first: string
  readonly second: string
  readonly by: 'diameter' | 'pitch' | 'neither'
  /** Between the smallest of the larger and the largest of the smaller, both of the usual class; negative: they overlap. */
  readonly diameterGapMm: number
  /** How far their threads drift apart over the threads counted. */
  readonly pitchGapMm: number
  readonly overCount: number
  readonly says: string
}

/** What a shop can read: a diameter with a micrometer, the length of a row of threads with a rule or a caliper (common practice). */
const MICROMETER_MM = 0.01
const CALIPER_MM = 0.03
const ROW_MM = 0.2
const MOST_COUNTED = 10
/** Six threads of a sixteenth are 3/8 inch, whatever the last bit says. */
const ROUNDING = 1e-9

/** Tells two threads apart by the measurement that splits them most clearly; a length of thread of one diameter is there to count on. */
export function tellApart({ first, second, side }: { first: Candidate; second: Candidate; side: Side }): Tell {
  const diameterGapMm = gapMm(first, second, side)
  const overCount = countable(first, second)
  const pitchGapMm = overCount * Math.abs(first.pitchMm - second.pitchMm)
  const byDiameter = diameterGapMm / (2 * MICROMETER_MM)
  const byPitch = pitchGapMm / ROW_MM
  const clear = diameterGapMm / (2 * CALIPER_MM)
  const by = byPitch > clear && byPitch >= 1 ? 'pitch' : byDiameter >= 1 ? 'diameter' : 'neither'
  const facts = { first: first.name, second: second.name, by, diameterGapMm, pitchGapMm, overCount } as const
  return { ...facts, says: words(facts, { first, second, side }) }
}

function gapMm(first: Candidate, second: Candidate, side: Side): number {
  const [a, b] = [first.crest[side], second.crest[side]]
  return Math.max(a.minMm - b.maxMm, b.minMm - a.maxMm)
}

function countable(...pair: readonly Candidate[]): number {
  const most = Math.min(...pair.map(({ majorMm, pitchMm }) => majorMm / pitchMm))
  return Math.min(MOST_COUNTED, Math.floor(most + ROUNDING))
}

function words(tell: Omit<Tell, 'says'>, { first, second, side }: { first: Candidate; second: Candidate; side: Side }): string {
  switch (tell.by) {
    case 'diameter':
      return `the ${crestName(side)} splits them: ${bandText(first, side)}, ${bandText(second, side)}${instrument(tell)}`
    case 'pitch':
      return `the pitch splits them: ${tell.overCount} threads of ${rowText(first, tell)}, of ${rowText(second, tell)}`
    case 'neither':
      return `neither caliper nor rule splits them: ${bandText(first, side)}, ${bandText(second, side)}, and ${tell.overCount} threads drift only ${tell.pitchGapMm.toFixed(2)} mm apart; try a thread gauge or a part known to be right, by hand`
    default:
      return tell.by satisfies never
  }
}

function crestName(side: Side): string {
  return side === 'external' ? 'major diameter' : 'minor diameter'
}

function bandText(candidate: Candidate, side: Side): string {
  const { minMm, maxMm } = candidate.crest[side]
  return `${candidate.name} ${minMm.toFixed(2)} to ${maxMm.toFixed(2)} mm`
}

function rowText({ name, pitchMm }: Candidate, { overCount }: Omit<Tell, 'says'>): string {
  return `${name} are ${(overCount * pitchMm).toFixed(1)} mm long`
}

function instrument({ diameterGapMm }: Omit<Tell, 'says'>): string {
  return diameterGapMm < 2 * CALIPER_MM ? `: only ${diameterGapMm.toFixed(3)} mm apart, so with a micrometer` : ''
}
