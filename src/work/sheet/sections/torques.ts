import { inUnit } from '../../../quantity/in-unit.ts'
import { showNumber, showSpread } from '../../../quantity/show.ts'
import { thingName } from '../../../report/plan/thing-name.ts'
import { BLANK, type Cell } from '../../../report/sheet/sheet.ts'
import type { HoleInWork, JudgedJob } from '../../job/judged-job.ts'
import { type SectionOf, table } from '../section.ts'

/** One torque a thread, with what it means and what was pulled. */
export const torques: SectionOf = judged => {
  if (judged.holes.length === 0) return undefined
  const rows = judged.holes.map(hole => rowOf(hole, judged.job.tools.wrench))
  return {
    id: 'torques',
    heading: 'Torque list',
    blocks: [table('Torques', ['where', 'torque', 'threads', 'wrench', 'pulled', 'after heat cycles'], rows)]
  }
}

function rowOf({ place, part, hole }: HoleInWork, wrench: JudgedJob['job']['tools']['wrench']): readonly Cell[] {
  const card = part.torque?.card
  const pounds = card === undefined ? '' : ` (${showNumber(inUnit('torque', 'lbf·in', card.value), 'torque')} lbf·in)`
  const torque: Cell = card === undefined ? BLANK : `${showNumber(card.value, 'torque')} N·m${pounds}`
  const state = [part.torque?.threads ?? null, hole['threads-with']].filter(one => one !== null).join('; in place: ')
  const range = wrench === null ? BLANK : `${showSpread(wrench.range.low, wrench.range.high, 'torque')} N·m`
  return [
    `${thingName(place)}, ${part.thread.name}`,
    torque,
    state === '' ? BLANK : `card: ${state.replaceAll('-', ' ')}`,
    range,
    BLANK,
    BLANK
  ]
}
