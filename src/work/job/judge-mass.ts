import { type MassFit, massFit } from '../../fitting/mass-fit.ts'
import { type BoundsOf, boundsOf } from '../../formula/bounds.ts'
import { Given } from '../../formula/given.ts'
import type { Job } from '../../job/read-job.ts'
import { resultsBy } from '../../report/result-map.ts'
import { doubted } from '../../rules/judge.ts'
import { MASS_RULES } from '../../rules/list.ts'
import { asked, type SubjectOf } from '../../rules/rule.ts'
import { negligibleChangeKg } from '../../trade/mass/negligible.ts'
import { LOADED_RESULTS, MASS_RESULTS } from '../results/mass-results.ts'
import { type JudgedThing, prefixed } from './judged-thing.ts'

/** What the rules are asked about. */
type MassSubject = SubjectOf<(typeof MASS_RULES)[number]>

type JobMass = NonNullable<Job['mass']>

/** Mass and centre of the machine after the work. */
export function judgeMass({ parts, holes }: Job, mass: JobMass): JudgedThing {
  const bounds = boundsOf(treeOf(parts, mass), massFit)
  const subject = subjectOf(mass, bounds)
  const { after, loaded } = bounds
  return {
    results: prefixed('mass', [...resultsBy(MASS_RESULTS, after), ...(loaded === null ? [] : resultsBy(LOADED_RESULTS, loaded))]),
    findings: MASS_RULES.map(rule => doubted(asked(rule, subject), fewerThanHoles(holes, mass)))
  }
}

function treeOf(parts: Job['parts'], { before, adds, loads, limits }: JobMass): MassFit {
  return {
    before: { massKg: before.mass, armM: before.arm },
    adds: adds.map(({ part, mass, arm }) => ({ massKg: massOf(parts, part, mass), armM: arm })),
    loads: loads.map(({ least, greatest, arm }) => ({ leastKg: least, greatestKg: greatest, armM: arm })),
    limits: limits === null ? null : { forwardM: new Given(limits.low), rearwardM: new Given(limits.high) }
  }
}

function massOf(parts: Job['parts'], part: string | null, mass: Given | null): Given {
  const found = part === null ? mass : (parts[part]?.mass ?? null)
  if (found === null) throw new Error('a change without a mass came to be judged')
  return found
}

/** Each line of `adds` is one part at one arm: a part that goes into more holes weighs more than it was counted. */
function fewerThanHoles(holes: Job['holes'], { adds }: JobMass): readonly string[] {
  const takers = Object.values(holes).map(({ takes }) => takes)
  return [...new Set(adds.flatMap(({ part }) => part ?? []))].flatMap(name => {
    const [taken, counted] = [takers.filter(one => one === name).length, adds.filter(({ part }) => part === name).length]
    return taken > counted
      ? [`${name} goes into ${taken} holes and is counted ${counted === 1 ? 'once' : `${counted} times`} in mass.adds`]
      : []
  })
}

type Loaded = NonNullable<BoundsOf<ReturnType<typeof massFit>>['loaded']>

function subjectOf({ before, limits }: JobMass, { after, loaded }: BoundsOf<ReturnType<typeof massFit>>): MassSubject {
  const negligible = negligibleChangeKg(before.mass.low)
  return {
    centres: loaded === null ? [{ of: 'the centre of mass', centreM: after.centreM }] : centresOf(loaded),
    limits,
    movedKg: after.movedKg,
    negligible: negligible === null ? null : { value: negligible }
  }
}

function centresOf({ forward, rearward }: Loaded): MassSubject['centres'] {
  return [
    { of: 'the centre of mass, loaded as far forward as can be,', centreM: forward.centreM },
    { of: 'the centre of mass, loaded as far to the rear as can be,', centreM: rearward.centreM }
  ]
}
