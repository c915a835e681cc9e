import { showNumber } from '../../../quantity/show.ts'
import { ofGiven } from '../figure.ts'
import { type ScrapOf, scrap } from './scrap.ts'

/** The torque: where the joint was worked out, up to what strips or tears first. */
export const overTorque: ScrapOf = (hole, { job }) => {
  const highest = hole.result('joint.torque.highest')
  const card = hole.part.torque?.card
  if (card === undefined || typeof highest?.value !== 'number') return undefined
  const accuracy = job.tools.wrench?.accuracy?.high ?? 0
  const room = (highest.low ?? highest.value) - card.high * (1 + accuracy / 100)
  const says =
    room > 0
      ? `at the part; ${showNumber(room, 'torque-down')} N·m more, at the worst end, and thread or body gives`
      : 'at the part: at the worst end thread or body has given before'
  return scrap(hole, ofGiven('cardNm', 'torque', card), room, says)
}
