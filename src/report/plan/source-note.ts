import { SOURCES, type SourceId } from '../../formula/source.ts'

/** `[ABYC E-11, support of conductors every 18 in (memory)]`; empty for what follows from the numbers of the job alone. */
export function sourceNote(id: string | null): string {
  if (id === null || id === 'geometry' || id === 'arithmetic') return ''
  const { title, label } = SOURCES[id as SourceId]
  return `[${title}${title.includes(label) ? '' : ` (${label})`}]`
}
