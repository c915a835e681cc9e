import { SOURCES } from '../../../formula/source.ts'
import { sourceNote } from '../../../report/plan/source-note.ts'
import { thingName } from '../../../report/plan/thing-name.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { drillMmOf } from '../../plan/drill-of.ts'
import { ofNumber } from '../../plan/figure.ts'
import { devicesOf } from '../../wiring/devices.ts'
import { type SectionOf, table } from '../section.ts'

/** What is laid out before the work, with what is kept over. */
export const material: SectionOf = judged => {
  const rows = [...parts(judged), ...tools(judged), ...devices(judged)]
  if (rows.length === 0) return undefined
  const asks =
    'One spare of each fuse rating, or half as many as are fitted, is what 14 CFR 27.1357 asks for; elsewhere the code of the place.'
  const text = `${asks} ${sourceNote(SOURCES['cfr-27.1357'].id)}`
  const note = devicesOf(judged.job).some(({ does }) => does === 'protects') ? [{ kind: 'text', text } as const] : []
  return {
    id: 'material',
    heading: 'Material and spares',
    blocks: [table('Material', ['what', 'how many', 'spare', 'for'], rows), ...note]
  }
}

function parts({ holes }: JudgedJob): readonly (readonly string[])[] {
  return holes.flatMap(({ place, hole, part }) => [
    [`${hole.takes}, ${part.kind}, ${part.thread.name}`, '1', '', thingName(place)],
    ...hole['under-shoulder'].map(({ what, thickness }) => [
      `${what}, ${ofNumber('stackMm', '', thickness.value).text}`,
      '1',
      '1',
      thingName(place)
    ]),
    ...lubricant(hole['threads-with'], thingName(place))
  ])
}

function lubricant(what: string | null, place: string): readonly (readonly string[])[] {
  return what === null || what === 'nothing' ? [] : [[what.replaceAll('-', ' '), 'a little', '', place]]
}

function tools({ holes }: JudgedJob): readonly (readonly string[])[] {
  const drills = holes.map(
    ({ hole, part }) => `drill ${ofNumber('drillMm', '', drillMmOf({ hole, part }), 'drill').text}, point ${hole.drill.point.value}°`
  )
  const taps = holes.map(({ part }) => `taps ${part.thread.name}`)
  const inserts = holes.map(({ part }) => `repair insert for ${part.thread.name}`)
  return [
    ...[...new Set(drills)].map(what => [what, '1', '1', 'opening']),
    ...[...new Set(taps)].map(what => [what, 'a set', '', 'tapping']),
    ...[...new Set(inserts)].map(what => [what, '', '1', 'the way back'])
  ]
}

function devices({ job }: JudgedJob): readonly (readonly string[])[] {
  return devicesOf(job).map(({ what, does }) => [what, '1', does === 'protects' ? '1 of its rating' : '', 'circuit'])
}
