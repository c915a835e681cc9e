import type { Line } from '../formula/working.ts'
import type { Diagnostic } from '../quantity/diagnostic.ts'
import type { Shown } from '../quantity/digits.ts'
import type { Finding } from '../rules/finding.ts'
import type { Section } from './drawing/section.ts'
import type { TimeCurrent } from './drawing/time-current.ts'

/** The one result model: plain, unrounded, with units and sources. Every printer is a function of it. */
export interface Answer {
  readonly command: string
  /** What the command is about, in a few words, for the heading of a table. */
  readonly title: string
  /** The one number that spoils the work first, before everything else. */
  readonly first?: string | undefined
  readonly inputs: { readonly [name: string]: AnswerInput }
  readonly results: readonly Result[]
  readonly tables: { readonly [name: string]: Table }
  /** For the eye alone. */
  readonly drawing?: Section | undefined
  /** For the eye alone, too. */
  readonly curves?: TimeCurrent | undefined
  readonly findings: readonly Finding[]
  readonly cautions: readonly string[]
  readonly working?: readonly WorkingLine[] | undefined
  readonly errors?: readonly Diagnostic[]
}

export interface AnswerInput {
  /** A list where an option takes several; null for a span, which has ends alone. */
  readonly value: number | string | null | readonly number[]
  readonly low: number | null | readonly number[]
  readonly high: number | null | readonly number[]
  readonly unit: string
  readonly assumed: string | null
  /** As it was typed. */
  readonly text: string
}

export interface Result {
  readonly id: string
  readonly name: string
  readonly symbol: string
  readonly value: number | string | null
  readonly unit: string
  /** Worst case; null where no bounded input moves it. */
  readonly low: number | null
  readonly high: number | null
  readonly rss: readonly [low: number, high: number] | null
  /** Where most random draws fell, where they were asked for. */
  readonly samples?: readonly [low: number, high: number] | undefined
  readonly source: string
  readonly shown: Shown
  /** A length that a table gives in inches as well. */
  readonly inch?: boolean
  /** It is named for its unit, and is not told in another. */
  readonly ownUnit?: boolean | undefined
  /** The same in the unit that stands second, as a table shows it after the first. */
  readonly beside?: string
  /** Not shown in a table: asked away with an option. JSON has it all the same. */
  readonly hidden?: boolean | undefined
}

export interface Column {
  readonly key: string
  readonly name: string
  readonly unit: string
  readonly shown?: Shown
  /** The key under which each row has the unit of its own. */
  readonly unitIn?: string
}

export interface Table {
  readonly name: string
  readonly columns: readonly Column[]
  /** So many rows for the eye; JSON has them all. */
  readonly most?: number
  readonly rows: readonly { readonly [key: string]: number | string | boolean | null }[]
  /** Drawn as a curve for the eye, in place of its columns. */
  readonly plot?: Plot
}

/** Which column runs along and which up, and the levels drawn across. */
export interface Plot {
  readonly x: string
  readonly y: string
  readonly levels: readonly { readonly name: string; readonly value: number }[]
}

/** A line of working, and at which end of the bounds it was worked. */
export interface WorkingLine extends Line {
  readonly at: string
}
