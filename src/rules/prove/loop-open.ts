import { exactly } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { atMost, figure, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** A way round through the readings; null where they close none. */
  readonly loop: {
    readonly points: string
    readonly leftOverV: number
    readonly allowedV: number
    readonly path: readonly (string | number)[]
  } | null
}

const facts = fact('leftOverV', { says: 'left over around the loop', symbol: 'u', source: SOURCES.kirchhoff })

/** Whether the measured drops around a loop add up within what the meter may be off. */
export const loopOpen: Rule<Subject> = {
  id: 'prove/loop-open',
  question: 'do the measured volts around the loop add up?',
  why: 'Readings that contradict each other prove nothing: one was misread, or the supply moved between them.',
  change: 'take the readings of this loop again, one after the other with the load steady',
  source: SOURCES.kirchhoff,
  judge: ({ loop }) => {
    if (loop === null) return notJudged('a loop of readings', 'take the volts of the bus, of the load and of every run there and back')
    const { points, leftOverV, allowedV, path } = loop
    const says = `${points}: ${figure(Math.abs(leftOverV), facts)} left over, up to ${figure(allowedV, facts)} within what the meter may be off`
    return { ...atMost(facts, exactly(Math.abs(leftOverV)), { value: allowedV }, says), at: path }
  }
}
