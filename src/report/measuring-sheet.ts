import { markdown } from './sheet/escape.ts'

/** One line of a measuring sheet. */
export interface SheetLine {
  readonly field: string
  readonly says: string
  readonly measure: string
  /** As it stands in the job, or as it was taken; empty where it is unknown. */
  readonly now: string
}

export interface MeasuringSheet {
  readonly title: string
  readonly open: readonly SheetLine[]
  readonly given: readonly SheetLine[]
}

/** Blanks for a pencil, as Markdown: what is open in the order of what it does, then what was given, to be looked at once more. */
export function measuringSheet({ title, open, given }: MeasuringSheet): string {
  const parts = [
    `# Measuring sheet: ${markdown(title)}`,
    'Measured by ______________________ date ______________ instruments ______________________________',
    'Write what was read with its unit, and how far it may be off; take three readings where a hand is unsure.',
    ...(open.length === 0 ? [] : ['## To measure', tableOf(open, 'now')]),
    ...(given.length === 0 ? [] : ['## Given: look once more', tableOf(given, 'in the job')]),
    'The instructions of the maker go before anything on this sheet.'
  ]
  return `${parts.join('\n\n')}\n`
}

function tableOf(lines: readonly SheetLine[], now: string): string {
  const row = (cells: readonly string[]) => `| ${cells.join(' | ')} |`
  return [
    row(['field', 'what', 'how', now, 'reading 1', 'reading 2', 'reading 3', 'may be off by']),
    row(Array(8).fill('---')),
    ...lines.map(({ field, says, measure, now: text }) =>
      row([...[field, says, measure, text].map(markdown), ...Array(4).fill('________')])
    )
  ].join('\n')
}
