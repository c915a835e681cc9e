import { thingName } from '../../../report/plan/thing-name.ts'
import { BLANK, type Cell } from '../../../report/sheet/sheet.ts'
import type { HoleInWork, JudgedJob } from '../../job/judged-job.ts'
import { drillMmOf } from '../../plan/drill-of.ts'
import { ofGiven, ofNumber, ofResult } from '../../plan/figure.ts'
import { tapsOf } from '../../plan/taps-of.ts'
import { cutsOf, reelsOf } from '../../wiring/cuts.ts'
import { type SectionOf, table } from '../section.ts'

/** What stays with the machine: what was done, with what figures, by whom, approved by whom, and what to look at when. */
export const record: SectionOf = judged => {
  const { job, answer } = judged
  const rows: readonly (readonly Cell[])[] = [
    ['machine, serial number, hours', BLANK],
    ['work', answer.title],
    ...judged.holes.flatMap(hole => plannedAndDone(thingName(hole.place), planned(hole))),
    ...wiring(judged),
    ['parts fitted: part and serial numbers', BLANK],
    ['parts taken out: part and serial numbers', BLANK],
    ['done to what data', job['ask-first'].approval ?? BLANK],
    ['behind the metal', job['ask-first']['behind-the-metal'] ?? BLANK],
    ['where this departs from the plan, and why', BLANK],
    ['next inspection: what, and when', job.record['next-inspection'] ?? BLANK]
  ]
  return {
    id: 'record',
    heading: 'Record',
    blocks: [table('What was done', ['what', 'entry'], rows), signatures(judged), { kind: 'text', text: COVERS }]
  }
}

const COVERS =
  'A signature covers the work described here and no more. Readings as found and as left stand under "After". Who may sign, and what else must be kept, is for the code of the place to say.'

function signatures({ job: { record, 'ask-first': ask } }: JudgedJob) {
  const columns = ['who', 'name', 'date', 'signature, number']
  return table('Signed', columns, [
    ['done by', record.by || BLANK, BLANK, BLANK],
    ['inspected by', record['inspected-by'] || BLANK, BLANK, BLANK],
    ['approved by', ask.approval === null ? BLANK : `on ${ask.approval}`, BLANK, BLANK]
  ])
}

/** What is signed for is what was done: no figure of the plan stands in its place. */
function plannedAndDone(what: string, plan: string): readonly (readonly Cell[])[] {
  return [
    [`${what}, planned`, plan],
    [`${what}, as done`, BLANK]
  ]
}

function planned(hole: HoleInWork): string {
  const stop = ofResult(hole.result('hole.tip-depth'), 'depth-down')
  const thread = tapsOf(hole).at(-1)?.thread ?? null
  const drill = ofNumber('drillMm', '', drillMmOf(hole), 'drill')
  const card = hole.part.torque?.card
  return [
    stop === null ? `to be opened for ${hole.part.thread.name}` : `to be opened to ${drill.text}, stop ${stop.text}`,
    ...(thread === null ? [] : [`tapped ${hole.part.thread.name}, full thread ${thread.text}`]),
    `${hole.hole.takes} fitted${under(hole)}`,
    ...(card === undefined ? [] : [`torque ${ofGiven('cardNm', '', card).text}`])
  ].join('; ')
}

function under({ hole }: HoleInWork): string {
  const stack = hole['under-shoulder'].map(({ what }) => what).join(' and ')
  return stack === '' ? '' : ` with ${stack} under its shoulder`
}

function wiring({ job }: JudgedJob): readonly (readonly Cell[])[] {
  const reels = reelsOf(cutsOf(job)).map(({ size, totalM }) => `${ofNumber('totalM', '', totalM).text} of ${size}`)
  return reels.length === 0 ? [] : plannedAndDone('circuit', `to be wired with ${reels.join(', ')}`)
}
