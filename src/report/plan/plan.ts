import type { Diagnostic } from '../../quantity/diagnostic.ts'
import type { Result } from '../answer.ts'
import type { PlacedFinding } from '../jobs-answer.ts'

/** The parts of the work, in their order: a heading each. */
export const PARTS = ['ask first', 'make ready', 'drill', 'tap', 'try by hand', 'fit', 'wire', 'close', 'first run', 'record'] as const
export type Part = (typeof PARTS)[number]
/** Those that are done to one hole after the other. */
export const HOLE_PARTS: readonly Part[] = ['drill', 'tap', 'try by hand', 'fit']

/** A number that a step is about. */
export interface Figure {
  readonly name: string
  readonly value: number
  readonly low: number | null
  readonly high: number | null
  readonly unit: string
  /** As the trade writes it, with its unit. */
  readonly text: string
}

/** One action. */
export interface Step {
  readonly part: Part
  /** What of the job it is about, as `holes.left`; empty where it is about all of it. */
  readonly thing: string
  readonly figure: Figure | null
  readonly says: string
  readonly caution: string | null
  /** What is written down with a pen. */
  readonly blank: string | null
  /** Id of a source. */
  readonly source: string | null
}

/** A number that scraps the casting when it is missed. */
export interface Scrap {
  readonly thing: string
  readonly figure: Figure
  /** How far it may be missed by at the worst end, in its own unit; negative: it is missed already. */
  readonly room: number
  /** The room as a share of the number: what is tightest stands first. */
  readonly roomPercent: number
  readonly says: string
}

/** The order of work of one job. */
export interface Plan {
  readonly command: string
  readonly file: string
  readonly title: string
  /** Tightest first. */
  readonly scraps: readonly Scrap[]
  readonly steps: readonly Step[]
  readonly results: readonly Result[]
  readonly findings: readonly PlacedFinding[]
  readonly cautions: readonly string[]
  readonly errors: readonly Diagnostic[]
}
