import { Given } from '../formula/given.ts'
import { good, type Outcome } from '../quantity/fault.ts'
import { parseQuantity } from '../quantity/parse-quantity.ts'
import { outsideBand } from '../rules/joint/outside-band.ts'
import { asked } from '../rules/rule.ts'
import { usualBearingDiameterMm } from '../trade/joint/bearing.ts'
import { readCasting } from '../trade/joint/casting.ts'
import { joint as calculation, type Friction, type Joint } from '../trade/joint/joint.ts'
import { jointThread } from '../trade/joint/joint-thread.ts'
import { classStrength, readPartClass } from '../trade/joint/part-class.ts'
import { readThread } from '../trade/thread/designation.ts'
import type { Thread } from '../trade/thread/thread.ts'
import { JOINT_RESULTS } from '../work/results/joint-results.ts'
import type { Run } from './describe.ts'
import { joint as description } from './joint.ts'
import { quickSum } from './quick-sum.ts'
import { refusal, refused } from './refusal.ts'
import { sum, type Taken } from './sum.ts'
import type { Words } from './words.ts'

const readers = { thread: readThread, casting: readShear, part: readPart }
type JointWords = Words<typeof description.rows, typeof readers>

export const run: Run = quickSum(description, readers, words => {
  const friction = frictionOf(words)
  if (refused(friction)) return friction
  return sum({
    title: `${words.thread.name} in ${words.casting.says}`,
    tree: () => treeOf(words, friction),
    calculation,
    taken: takenOf(words, friction),
    results: JOINT_RESULTS,
    findings: r => (words.torque === null ? [] : [asked(outsideBand, { ...r, torqueNm: words.torque })]),
    cautions: r => [
      ...(words.casting.typical
        ? ['strengths of an alloy are typical values of cast bars, not of a wall in a real casting: keep a margin']
        : []),
      ...(r.firstToGive === null ? [] : [`first to give as the torque rises: ${r.firstToGive}`])
    ]
  })
})

interface Shear {
  readonly castingShearMpa: Given
  readonly says: string
  readonly typical: boolean
}

/** A strength where it has a unit, else an alloy. */
function readShear(text: string): Outcome<Shear> {
  const strength = parseQuantity('stress', text)
  if (strength.ok)
    return good({
      castingShearMpa: new Given(strength.value.value, { ...strength.value, at: ['casting'] }),
      says: `a casting of shear strength ${text}`,
      typical: false
    })
  const alloy = readCasting(text)
  return alloy.ok
    ? good({ castingShearMpa: new Given(alloy.value.shearMpa, { at: ['casting'] }), says: `${alloy.value.name}`, typical: true })
    : alloy
}

type Strength = (thread: Thread) => { readonly tensileMpa: Given; readonly proofMpa: Given | null }

/** A class promises its strength by the size of the thread. */
function readPart(text: string): Outcome<Strength> {
  const strength = parseQuantity('stress', text)
  if (strength.ok) return good(() => ({ tensileMpa: new Given(strength.value.value, { ...strength.value, at: ['part'] }), proofMpa: null }))
  const partClass = readPartClass(text)
  if (!partClass.ok) return partClass
  return good(({ majorMm }) => {
    const { tensileMpa, proofMpa } = classStrength({ partClass: partClass.value, majorMm })
    return { tensileMpa: new Given(tensileMpa, { at: ['part'] }), proofMpa: new Given(proofMpa, { at: ['part'] }) }
  })
}

function treeOf({ thread, engagement, casting, part, proof, neck, bore, torque, clamp }: JointWords, friction: Friction | null): Joint {
  const { tensileMpa, proofMpa } = part(thread)
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
    bearing: null
  }
}

/** A nut factor, or two frictions with the diameter they act on; the two ways shut each other out. */
function frictionOf(words: JointWords): Friction | null | ReturnType<typeof refusal> {
  const { 'nut-factor': nutFactor, 'thread-friction': inThread, 'bearing-friction': underIt, 'bearing-diameter': bearingDiameterMm } = words
  if (nutFactor !== null && (inThread !== null || underIt !== null))
    return refusal('--nut-factor', '--nut-factor beside a friction', 'one of the two ways')
  if (nutFactor !== null) return { by: 'nut-factor', nutFactor, bearingDiameterMm: bearingDiameterMm ?? usualBearing(words.thread) }
  if (inThread === null && underIt === null) return null
  if (inThread === null || underIt === null || bearingDiameterMm === null)
    return refusal('--thread-friction', 'a part of the three frictions', '--thread-friction, --bearing-friction and --bearing-diameter')
  return { by: 'friction', threadFrictionFactor: inThread, bearingFrictionFactor: underIt, bearingDiameterMm }
}

function usualBearing({ majorMm }: Thread): Given {
  return new Given(usualBearingDiameterMm({ majorMm }), { assumed: 'default: that of a hexagon, 1.25 d', at: ['bearing-diameter'] })
}

function takenOf(words: JointWords, friction: Friction | null): Taken {
  return friction?.by === 'nut-factor' && words['bearing-diameter'] === null
    ? { 'bearing-diameter': { value: friction.bearingDiameterMm, why: 'that of a hexagon, 1.25 d' } }
    : {}
}
