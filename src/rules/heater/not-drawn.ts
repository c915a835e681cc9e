import { SOURCES } from '../../formula/source.ts'
import { plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** Every hole that takes a heater. */
  readonly heaterHoles: readonly string[]
  /** Every load, by the hole of its heater or its own name. */
  readonly loadNames: readonly string[]
}

/** Whether every heater that is fitted is counted in the circuit that is drawn. */
export const notDrawn: Rule<Subject> = {
  id: 'heater/not-drawn',
  question: 'has every hole that takes a heater its load in the circuit?',
  why: 'A heater that nobody drew takes its current all the same: through a fuse, a wire and a generator that were judged without it.',
  change:
    'draw it under circuit.loads, as { heater: NAME OF THE HOLE, from: …, to: … }; one that another circuit feeds needs a job of that',
  source: SOURCES.practice,
  judge: ({ heaterHoles, loadNames }) => {
    const forgotten = heaterHoles.filter(name => !loadNames.includes(name))
    if (forgotten.length === 0) return plainly('pass', 'every hole that takes a heater has its load in the circuit')
    const says = forgotten.map(name => `hole ${name} takes a heater, the circuit has no load of it`)
    return plainly('caution', says.join('; '), ['holes', forgotten[0]!, 'takes'])
  }
}
