import type { Sheet } from '../../report/sheet/sheet.ts'
import type { JudgedJob } from '../job/judged-job.ts'
import type { SectionOf } from './section.ts'
import { after } from './sections/after.ts'
import { before } from './sections/before.ts'
import { cuts } from './sections/cuts.ts'
import { drawings } from './sections/drawings.ts'
import { during } from './sections/during.ts'
import { first } from './sections/first.ts'
import { labels } from './sections/labels.ts'
import { mass } from './sections/mass.ts'
import { material } from './sections/material.ts'
import { record } from './sections/record.ts'
import { sources } from './sections/sources.ts'
import { supply } from './sections/supply.ts'
import { torques } from './sections/torques.ts'
import { work } from './sections/work.ts'

/** The sheet from top to bottom: a new part is one file and one word here. */
const SECTIONS: readonly SectionOf[] = [
  first,
  before,
  during,
  drawings,
  work,
  after,
  cuts,
  material,
  labels,
  torques,
  supply,
  mass,
  sources,
  record
]

/** The sheet of a judged job, as a plain model. */
export function sheetOf(judged: JudgedJob): Sheet {
  const { title, file, verdict } = judged.answer
  return {
    title,
    file,
    practice: judged.job.job.practice,
    verdict: verdict ?? 'not-judged',
    sections: SECTIONS.flatMap(of => of(judged) ?? [])
  }
}
