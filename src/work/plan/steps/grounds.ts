import type { Job } from '../../../job/read-job.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { WIRING } from '../../../rules/practice/wiring.ts'
import { ofGiven, ofNumber, written } from '../figure.ts'
import { type StepsOf, step } from '../step.ts'

type Run = NonNullable<Job['circuit']>['runs'][number]

/** Every joint to structure: bare, tight, finished again, measured. */
export const grounds: StepsOf = ({ job }) => {
  if (job.circuit === null) return undefined
  const bonded = job.circuit.runs.filter(({ bond }) => bond !== null)
  if (bonded.length === 0) return undefined
  const { refinish, groundJoint } = WIRING[job.job.practice]
  const most = groundJoint === null ? '' : ', no more than 3 mohm'
  return [
    ...bonded.flatMap(run => joint(run, most)),
    step('wire', '', refinish === null ? 'finish the bared metal again' : `finish the bared metal again within ${refinish.hours} h`, {
      source: refinish?.source.id ?? 'practice'
    })
  ]
}

function joint({ from, to, bond }: Run, most: string): readonly Step[] {
  if (bond === null) return []
  const figure = ofGiven('bondOhm', `joint ${from} to ${to}`, bond)
  const mohm = ofNumber('bondFactor', 'milliohm', bond.value * 1000, 'plain')
  return [
    step('wire', '', `ground ${from} to ${to}: metal bare and bright under the terminal, no self-tapping screw`, {
      caution: 'not on magnesium: take the return to another point',
      source: 'ac-43.13-1b-11-189'
    }),
    step('wire', '', `measure the joint ${from} to ${to} by millivolts over a known current${most}`, {
      figure: written(figure, `${mohm.text} mohm`),
      blank: `joint ${from} to ${to}`
    })
  ]
}
