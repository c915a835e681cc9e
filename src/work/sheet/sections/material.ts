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

/** The same for several holes is one line. */
function parts({ holes }: JudgedJob): readonly (readonly string[])[] {
  const wanted = holes.flatMap(({ place, hole, part }) => [
    { what: `${hole.takes}, ${part.kind}, ${part.thread.name}`, spare: false, place },
    ...hole['under-shoulder'].map(({ what, thickness }) => ({
      what: `${what}, ${ofNumber('stackMm', '', thickness.value).text}`,
      spare: true,
      place
    }))
  ])
  const lines = [...new Set(wanted.map(({ what }) => what))].map(what => {
    const all = wanted.filter(one => one.what === what)
    const count = String(all.length)
    return [what, count, all[0]!.spare ? count : '', all.map(({ place }) => thingName(place)).join(', ')]
  })
  return [...lines, ...holes.flatMap(({ place, hole }) => lubricant(hole['threads-with'], thingName(place)))]
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
