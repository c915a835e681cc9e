import type { Job } from '../../../job/read-job.ts'
import { showNumber } from '../../../quantity/show.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { WIRING } from '../../../rules/practice/wiring.ts'
import { alloyFamily, GROUND_METALS, type GroundMetal } from '../../../trade/circuit/terminal-ground.ts'
import { ofGiven, written } from '../figure.ts'
import { type StepsOf, step } from '../step.ts'

type Run = NonNullable<Job['circuit']>['runs'][number]

/** Every joint to structure: bare, tight, finished again, measured. */
export const grounds: StepsOf = ({ job }) => {
  const bonded = job.circuit?.runs.filter(({ bond, metal }) => bond !== null || metal !== null) ?? []
  if (bonded.length === 0) return undefined
  const { refinish } = WIRING[job.job.practice]
  const within = refinish === null ? '' : ` within ${refinish.hours} h`
  return [
    ...metals(job, bonded),
    ...bonded.flatMap(run => joint(run, job)),
    step('wire', '', `finish the bared metal again${within}`, { source: refinish?.source.id })
  ]
}

/** What the castings of the job, and what its joints are made to, are good for as a ground; where the alloy is not told, it is asked for. */
function metals({ holes }: Job, bonded: readonly Run[]): readonly Step[] {
  const told = bonded.flatMap(({ metal }) => metal ?? [])
  const alloys = [...new Set([...Object.values(holes).map(({ casting }) => casting.alloy), ...told])]
  return alloys.map(alloy => {
    const family = alloy === null ? undefined : alloyFamily(alloy)
    if (family === undefined)
      return step(
        'wire',
        '',
        `before a casting is used as a ground, ask what it is made of${alloy === null ? '' : `: ${alloy} does not tell`}`,
        {
          caution: GROUND_METALS.magnesium.says
        }
      )
    return step('wire', '', `look to the ground on ${alloy}: ${metalText(GROUND_METALS[family])}`, {
      source: GROUND_METALS[family].source.id
    })
  })
}

function metalText({ ground, says }: GroundMetal): string {
  return ground === 'never' ? `never; ${says}` : says
}

/** In the unit that the joint is told in. */
function bandText({ low, high }: NonNullable<Run['bond']>): string {
  return low === high ? '' : `${showNumber(low * 1000, 'plain')} to ${showNumber(high * 1000, 'plain')} mohm`
}

function joint({ from, to, bond }: Run, { job }: Job): readonly Step[] {
  const { groundJoint } = WIRING[job.practice]
  const mohm = (ohm: number) => `${showNumber(ohm * 1000, 'plain')} mohm`
  const most = groundJoint === null ? '' : `, ${mohm(groundJoint.jointOhm)} at most`
  return [
    step('wire', '', `make the metal under the terminal of ${from} to ${to} bare and bright; no self-tapping screw`, {
      source: 'ac-bonding'
    }),
    step('wire', '', `measure the joint ${from} to ${to}: millivolts over it at a known current${most}`, {
      figure:
        bond === null ? null : { ...written(ofGiven('bondOhm', `joint ${from} to ${to}`, bond), mohm(bond.value)), band: bandText(bond) },
      blank: `joint ${from} to ${to}`,
      source: groundJoint?.source.id
    })
  ]
}
