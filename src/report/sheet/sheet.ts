import type { Verdict } from '../../rules/finding.ts'
import type { Drawing } from '../drawing/drawing.ts'
import type { Step } from '../plan/plan.ts'

/** What goes to the bench and stays with the machine: a plain model, of which every printer is a pure function. Its words are not yet escaped for any page. */
export interface Sheet {
  readonly title: string
  readonly file: string
  readonly practice: string
  readonly verdict: Verdict
  readonly sections: readonly Section[]
}

export interface Section {
  /** A word of small letters, for a link. */
  readonly id: string
  readonly heading: string
  readonly blocks: readonly Block[]
}

export type Block =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'notices'; readonly notices: readonly Notice[] }
  | { readonly kind: 'numbers'; readonly caption: string; readonly numbers: readonly BigNumber[] }
  | SheetTable
  | { readonly kind: 'steps'; readonly groups: readonly StepGroup[] }
  | { readonly kind: 'drawing'; readonly drawing: Drawing }

/** A failure, a doubt, or a caution. */
export interface Notice {
  readonly level: Exclude<Verdict, 'pass'>
  readonly head: string
  readonly says: string
  /** What to do about it; empty where there is nothing to do. */
  readonly change: string
}

/** A number to be read from across the bench. */
export interface BigNumber {
  readonly value: string
  readonly name: string
  readonly says: string
}

export interface SheetTable {
  readonly kind: 'table'
  readonly caption: string
  /** The first column heads its row. */
  readonly columns: readonly string[]
  readonly rows: readonly (readonly Cell[])[]
}

/** Text, text with a word about it, or room for a pen. */
export type Cell = string | Noted | typeof BLANK
export const BLANK = { blank: true } as const

export interface Noted {
  readonly text: string
  readonly note: string
}

/** What of a cell is to be read; null where it is left for a pen. */
export function readOf(cell: Cell): Noted | null {
  if (typeof cell === 'string') return { text: cell, note: '' }
  return 'blank' in cell ? null : cell
}

/** Steps under one heading, numbered on from those before. */
export interface StepGroup {
  readonly heading: string
  readonly start: number
  readonly steps: readonly Step[]
}
