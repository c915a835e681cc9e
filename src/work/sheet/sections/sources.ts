import { SOURCES, type SourceId } from '../../../formula/source.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { stepsOf } from '../../plan/steps.ts'
import { type SectionOf, table } from '../section.ts'

/** Where every figure comes from, with how the source was seen. */
export const sources: SectionOf = judged => {
  const rows = sourceIdsOf(judged).map(id => [SOURCES[id].title, SOURCES[id].label, id])
  return { id: 'sources', heading: 'Sources', blocks: [table('Sources', ['source', 'label', 'id'], rows)] }
}

function sourceIdsOf(judged: JudgedJob): readonly SourceId[] {
  const { results, findings } = judged.answer
  const named = [...results, ...findings, ...stepsOf(judged)].flatMap(({ source }) => (source === null ? [] : [source as SourceId]))
  return [...new Set(named)].sort()
}
