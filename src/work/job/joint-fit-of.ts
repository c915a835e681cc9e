import type { HoleFit } from '../../fitting/hole-fit.ts'
import type { JointFit } from '../../fitting/joint-fit.ts'
import { Given } from '../../formula/given.ts'
import { LEFT_OUT } from '../../job/field.ts'
import type { Job } from '../../job/read-job.ts'
import type { Lack } from '../../rules/judge.ts'
import { mouthAcross } from '../../trade/hole/odd-lengths.ts'
import { type Wide, wideOf } from '../../trade/hole/wide.ts'
import { usualBearingDiameterMm } from '../../trade/joint/bearing.ts'
import { type Casting, readCasting } from '../../trade/joint/casting.ts'
import type { Joint } from '../../trade/joint/joint.ts'
import { jointThread } from '../../trade/joint/joint-thread.ts'
import { usualNutFactor } from '../../trade/joint/nut-factors.ts'
import { classStrength } from '../../trade/joint/part-class.ts'
import { minorLimits } from '../../trade/thread/thread-results.ts'
import type { JobHole, JobPart } from './hole-fit-of.ts'

/** The joint of a hole, or what has to be known before there is one. */
export type FoundJoint = { readonly fit: JointFit; readonly lacks: null } | { readonly fit: null; readonly lacks: Lack }

interface Opened {
  readonly fit: HoleFit
  /** The alloy of the casting, where a table knows it. */
  readonly metal: Casting | null
}

export function jointFitOf({ tools, parts }: Job, hole: JobHole, { fit, metal }: Opened): FoundJoint {
  const part = parts[hole.takes]!
  const shearMpa = shearOf(hole, metal)
  const strength = strengthOf(part)
  const nutFactor = nutFactorOf(hole)
  const lacks = lackOf(part, hole, { shearMpa, strength, nutFactor })
  if (lacks !== null || shearMpa === null || strength === null || nutFactor === null)
    return { fit: null, lacks: lacks ?? { field: 'friction', measure: 'a trial with a load cell', at: hole.path } }
  const ring = ringLack(hole, part)
  const holds = {
    thread: jointThread(part.thread, wideFit(part, fit)?.widestMm),
    castingShearMpa: shearMpa,
    ...strength,
    neckMm: part.body?.neck ?? null,
    boreMm: part.body?.bore ?? null,
    friction: { by: 'nut-factor', nutFactor, bearingDiameterMm: ring === null ? null : usualBearing(part.thread, ring) },
    clampN: hole.clamp,
    bearing: bearingOf(hole, part)
  } as const
  return { fit: { ...fit, holds, torque: torqueOf(part, tools) }, lacks: null }
}

/** The hole as it will be, where that is wider than its thread allows. */
export function wideFit({ thread }: JobPart, { hole: { foundDiameterMm, drillMm } }: HoleFit): Wide | null {
  return wideOf({ foundDiameterMm, drillMm, minorMaxMm: minorLimits(thread).maxMm })
}

/** The alloy of the casting, where a table knows it. */
export function metalOf({ casting: { alloy } }: JobHole): Casting | null {
  const read = alloy === null ? null : readCasting(alloy)
  return read?.ok ? read.value : null
}

/** The strength that the job gives goes before that of its alloy. */
function shearOf(hole: JobHole, metal: Casting | null): Given | null {
  return hole.casting.shear ?? (metal === null ? null : new Given(metal.shearMpa, { at: [...hole.casting.path, 'alloy'] }))
}

type Strength = Pick<Joint, 'tensileMpa' | 'proofMpa'>

function strengthOf({ body, thread: { majorMm } }: JobPart): Strength | null {
  if (body === null) return null
  const at = [...body.path, 'class']
  const promised = body.class === null ? null : classStrength({ partClass: body.class, majorMm })
  const tensileMpa = body.tensile ?? (promised === null ? null : new Given(promised.tensileMpa, { at }))
  const proofMpa = body.proof ?? (promised === null ? null : new Given(promised.proofMpa, { at }))
  return tensileMpa === null ? null : { tensileMpa, proofMpa }
}

interface Known {
  readonly shearMpa: Given | null
  readonly strength: Strength | null
  readonly nutFactor: Given | null
}

/** The first thing that is missing. */
function lackOf(part: JobPart, hole: JobHole, { shearMpa, strength, nutFactor }: Known): Lack | null {
  if (part['thread-length'] === null)
    return { field: 'thread-length', measure: 'measure from the shoulder to the last full thread of the part', at: part.path }
  if (shearMpa === null) return { ...castingLack(hole), at: hole.casting.path }
  if (strength === null)
    return {
      field: 'body.tensile',
      measure: 'the sheet of the material, or body.class where the part has one',
      at: part.body?.path ?? part.path
    }
  if (nutFactor === null)
    return { field: 'friction.nut-factor', measure: 'a trial with a load cell, or the table of the compound', at: hole.path }
  return null
}

/** What is on the threads sets the friction where no trial does; for most compounds no table has a figure. */
function nutFactorOf({ friction, 'threads-with': threads, path }: JobHole): Given | null {
  if (friction !== null) return friction['nut-factor']
  const row = threads === null ? null : usualNutFactor(threads)
  if (row === null) return null
  const { nutFactor, leastFactor: low, greatestFactor: high } = row
  return new Given(nutFactor, { low, high, assumed: `default: ${row.threads}`, at: [...path, 'friction', 'nut-factor'] })
}

/** An alloy that no table knows is told in the words of the table. */
function castingLack({ casting: { alloy } }: JobHole): Omit<Lack, 'at'> {
  const read = alloy === null ? null : readCasting(alloy)
  if (read === null || read.ok) return { field: 'casting.alloy', measure: "the mark on the casting, or the maker's list" }
  const near = read.fault.near === undefined ? `; known is ${read.fault.accepted}` : `; did you mean ${read.fault.near}?`
  return { field: 'casting.shear', measure: `${read.fault.found}${near}` }
}

/** The face under the shoulder less the widest hole under it; without either, nothing is known of the ring. A bare shoulder stands around its thread. */
function bearingOf(hole: JobHole, { shoulder, thread }: JobPart): Joint['bearing'] {
  const under = hole['under-shoulder']
  const holes = under.flatMap(({ hole }) => hole ?? [])
  if (shoulder === null || under === LEFT_OUT || holes.length < under.length) return null
  // Which of them is the widest may change within their bounds.
  return { faceMm: shoulder, holeMm: new Given(thread.majorMm), alsoMm: [...holes, mouthOf(hole, thread)] }
}

/** Where the mouth is cut away there is no face to bear on. */
function mouthOf({ mouth: { value, low, high, assumed, at } }: JobHole, thread: JobPart['thread']): Given {
  const [across, least, most] = [value, low, high].map(mouthMm => mouthAcross(mouthMm, thread))
  return new Given(across!, { low: least, high: most, assumed, at })
}

/** What is missing of that ring. */
export function ringLack(hole: JobHole, part: JobPart): Lack | null {
  if (bearingOf(hole, part) !== null) return null
  if (part.shoulder === null) return { field: 'shoulder', measure: 'calliper, across the face under the shoulder', at: part.path }
  const under = hole['under-shoulder'].find(item => item.hole === null)
  if (under === undefined)
    return { field: 'under-shoulder', measure: 'what lies under the shoulder, and the hole of it; [] for nothing', at: hole.path }
  return { field: 'hole', measure: 'calliper, the hole of what lies under the shoulder', at: under.path }
}

/** In place of what is missing of the ring. */
function usualBearing(thread: JobPart['thread'], { at, field }: Lack): Given {
  return new Given(usualBearingDiameterMm({ majorMm: thread.majorMm }), {
    assumed: 'default: that of a hexagon, 1.25 d',
    at: [...at, field]
  })
}

/** The card is what is set; the accuracy of the wrench is what the part may get instead. */
function torqueOf({ torque }: JobPart, { wrench }: Job['tools']): JointFit['torque'] {
  if (torque === null) return null
  const accuracy = wrench?.accuracy ?? null
  const error =
    accuracy === null
      ? { assumed: 'default: an exact wrench', at: ['tools', 'wrench', 'accuracy'] }
      : { low: -accuracy.high, high: accuracy.high, at: accuracy.at }
  return { settingNm: torque.card, errorPercent: new Given(0, error) }
}
