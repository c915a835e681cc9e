import type { Cell, Section, SheetTable } from '../../report/sheet/sheet.ts'
import type { JudgedJob } from '../job/judged-job.ts'

/** One part of the sheet; undefined where the job gives nothing for it. */
export type SectionOf = (judged: JudgedJob) => Section | undefined

export function table(caption: string, columns: readonly string[], rows: readonly (readonly Cell[])[]): SheetTable {
  return { kind: 'table', caption, columns, rows }
}

/** A table, or nothing where it would have no row. */
export function tableOrNone(caption: string, columns: readonly string[], rows: readonly (readonly Cell[])[]): readonly SheetTable[] {
  return rows.length === 0 ? [] : [table(caption, columns, rows)]
}
