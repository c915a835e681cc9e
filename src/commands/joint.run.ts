import { Given } from '../formula/given.ts'
import { good, type Outcome } from '../quantity/fault.ts'
import { parseQuantity } from '../quantity/parse-quantity.ts'
import { parseWithin } from '../quantity/within.ts'
import { belowNeck, belowThread } from '../trade/hole/odd-lengths.ts'
import { usualBearingDiameterMm } from '../trade/joint/bearing.ts'
import { type Casting, readCasting } from '../trade/joint/casting.ts'
import { joint as calculation, type Friction, type Joint } from '../trade/joint/joint.ts'
import { jointThread } from '../trade/joint/joint-thread.ts'
import { classStrength, proofAbove, readPartClass } from '../trade/joint/part-class.ts'
import { readThread } from '../trade/thread/designation.ts'
import type { Thread } from '../trade/thread/thread.ts'
import { JOINT_RESULTS } from '../work/results/joint-results.ts'
import type { Run } from './describe.ts'
import { joint as description } from './joint.ts'
import { jointFindings } from './joint-findings.ts'
import { jointNotes, scatterTable } from './joint-notes.ts'
import { quickSum } from './quick-sum.ts'
import { refusal, refused } from './refusal.ts'
import { sum, type Taken } from './sum.ts'
import type { Words } from './words.ts'

const readers = { thread: readThread, casting: readShear, part: readPart }
type JointWords = Words<typeof description.rows, typeof readers>

export const run: Run = quickSum(description, readers, words => {
  const friction = frictionOf(words)
  if (refused(friction)) return friction
  const bearing = bearingOf(words)
  if (refused(bearing)) return bearing
  const strong = proofFault(words)
  if (strong !== null) return strong
  return sum({
    title: `${words.thread.name} in ${words.casting.says}`,
    tree: () => treeOf(words, { friction, bearing }),
    calculation,
    taken: takenOf(words, friction),
    results: JOINT_RESULTS,
    tables: r => scatterTable(r.preloadN),
    findings: r => jointFindings(words, r),
    cautions: r => jointNotes(words, r)
  })
})

interface Shear {
  readonly castingShearMpa: Given
  readonly says: string
  /** The alloy, where one was named: its strengths are typical ones. */
  readonly metal: Casting | null
}

/** A strength where it has a unit, else an alloy. */
function readShear(text: string): Outcome<Shear> {
  const strength = parseWithin('stress', text)
  if (strength.ok)
    return good({
      castingShearMpa: new Given(strength.value.value, { ...strength.value, at: ['casting'] }),
      says: `a casting of shear strength ${text}`,
      metal: null
    })
  if (isStress(text)) return strength
  const alloy = readCasting(text)
  return alloy.ok
    ? good({ castingShearMpa: new Given(alloy.value.shearMpa, { at: ['casting'] }), says: alloy.value.name, metal: alloy.value })
    : alloy
}

/** Told with a unit of stress: no name, whether it lies where a strength may lie or not. */
function isStress(text: string): boolean {
  return parseQuantity('stress', text).ok
}

export interface Strength {
  /** As told; null where a class promises it. */
  readonly toldMpa: Given | null
  readonly of: (thread: Thread) => { readonly tensileMpa: Given; readonly proofMpa: Given | null }
}

/** A class promises its strength by the size of the thread. */
function readPart(text: string): Outcome<Strength> {
  const strength = parseWithin('stress', text)
  if (strength.ok) {
    const tensileMpa = new Given(strength.value.value, { ...strength.value, at: ['part'] })
    return good({ toldMpa: tensileMpa, of: () => ({ tensileMpa, proofMpa: null }) })
  }
  if (isStress(text)) return strength
  const partClass = readPartClass(text)
  if (!partClass.ok) return partClass
  return good({
    toldMpa: null,
    of: ({ majorMm }) => {
      const { tensileMpa, proofMpa } = classStrength({ partClass: partClass.value, majorMm })
      return { tensileMpa: new Given(tensileMpa, { at: ['part'] }), proofMpa: new Given(proofMpa, { at: ['part'] }) }
    }
  })
}

function treeOf({ thread, engagement, casting, part, proof, neck, bore, torque, clamp }: JointWords, { friction, bearing }: Under): Joint {
  const { tensileMpa, proofMpa } = part.of(thread)
  return {
    thread: jointThread(thread),
    engagementMm: engagement,
    castingShearMpa: casting.castingShearMpa,
    tensileMpa,
    proofMpa: proof ?? proofMpa,
    neckMm: neck,
    boreMm: bore,
    friction,
    torqueNm: torque,
    clampN: clamp,
    bearing
  }
}

function proofFault({ part: { toldMpa }, proof }: JointWords): ReturnType<typeof refusal> | null {
  const above = proof === null || toldMpa === null ? null : proofAbove(proof, toldMpa)
  return above === null ? null : refusal('--proof', above, 'no more than the tensile strength')
}

type Under = Pick<Joint, 'friction' | 'bearing'>

/** The ring that bears: both its diameters or none. */
function bearingOf(words: JointWords): Joint['bearing'] | ReturnType<typeof refusal> {
  const { 'bearing-face': faceMm, 'bearing-hole': holeMm, 'bearing-diameter': meanMm } = words
  if (faceMm === null && holeMm === null) return null
  if (faceMm === null || holeMm === null) return refusal('--bearing-face', 'one of --bearing-face and --bearing-hole', 'both, or neither')
  const below = belowThread(holeMm, words.thread)
  if (below !== null) return refusal('--bearing-hole', below, `${words.thread.majorMm} mm and more`)
  const narrow = words.neck === null ? null : belowNeck(holeMm, words.neck)
  if (narrow !== null) return refusal('--bearing-hole', narrow, `${words.neck!.value} mm and more`)
  return meanMm === null
    ? { faceMm, holeMm }
    : refusal('--bearing-diameter', '--bearing-diameter beside --bearing-face', 'one of the two ways')
}

/** A nut factor, or two frictions with the diameter they act on; the two ways shut each other out. */
function frictionOf(words: JointWords): Friction | null | ReturnType<typeof refusal> {
  const { 'nut-factor': nutFactor, 'thread-friction': inThread, 'bearing-friction': underIt, 'bearing-diameter': bearingDiameterMm } = words
  if (nutFactor !== null && (inThread !== null || underIt !== null))
    return refusal('--nut-factor', '--nut-factor beside a friction', 'one of the two ways')
  const ring = words['bearing-face'] !== null
  if (nutFactor !== null)
    return { by: 'nut-factor', nutFactor, bearingDiameterMm: ring ? null : (bearingDiameterMm ?? usualBearing(words.thread)) }
  if (inThread === null && underIt === null) return null
  if (inThread === null || underIt === null || (bearingDiameterMm === null && !ring))
    return refusal(
      '--thread-friction',
      'a part of the three frictions',
      '--thread-friction, --bearing-friction, and --bearing-diameter or both --bearing-face and --bearing-hole'
    )
  return { by: 'friction', threadFrictionFactor: inThread, bearingFrictionFactor: underIt, bearingDiameterMm }
}

function usualBearing({ majorMm }: Thread): Given {
  return new Given(usualBearingDiameterMm({ majorMm }), { assumed: 'default: that of a hexagon, 1.25 d', at: ['bearing-diameter'] })
}

function takenOf(words: JointWords, friction: Friction | null): Taken {
  return friction?.by === 'nut-factor' && friction.bearingDiameterMm !== null && words['bearing-diameter'] === null
    ? { 'bearing-diameter': { value: friction.bearingDiameterMm, why: 'that of a hexagon, 1.25 d' } }
    : {}
}
