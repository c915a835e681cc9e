import type { Given, Plain } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { bearingDiameterMm as bearingDiameterOf, bearingPressureMpa } from './bearing.ts'
import { bodyMarginMpa, breakMarginMpa } from './body.ts'
import { highestTorque } from './highest-torque.ts'
import { leastRing, type Ring, stresses, threadRing } from './hollow-body.ts'
import * as pull from './preload.ts'
import * as strip from './strip.ts'
import { stripping } from './stripping.ts'
import { type Tightening, tightening } from './tightening.ts'

/** What the thread room knows of both threads: basic sizes, and limits of size at least material. */
export interface JointThread {
  readonly majorMm: number
  readonly pitchMm: number
  readonly pitchDiameterMm: number
  readonly stressAreaMm2: number
  readonly screwMajorMinMm: number
  readonly screwPitchMinMm: number
  readonly holeMinorMaxMm: number
  readonly holePitchMaxMm: number
}

/** The mean bearing diameter is null where it follows from the ring that bears. */
export type Friction =
  | { readonly by: 'nut-factor'; readonly nutFactor: Given; readonly bearingDiameterMm: Given | null }
  | {
      readonly by: 'friction'
      readonly threadFrictionFactor: Given
      readonly bearingFrictionFactor: Given
      readonly bearingDiameterMm: Given | null
    }

export interface Joint {
  readonly thread: JointThread
  /** Full threads only: chamfers of tap, part and mouth are off. */
  readonly engagementMm: Given
  readonly castingShearMpa: Given
  /** Of the part, as its proof stress. */
  readonly tensileMpa: Given
  readonly proofMpa: Given | null
  readonly neckMm: Given | null
  readonly boreMm: Given | null
  readonly friction: Friction | null
  readonly torqueNm: Given | null
  readonly clampN: Given | null
  readonly bearing: Bearing | null
}

/** The ring that bears under the shoulder. */
export interface Bearing {
  readonly faceMm: Given
  readonly holeMm: Given
  /** What else may end it inside: thread, other holes, mouth. The widest counts. */
  readonly alsoMm?: readonly Given[]
}

/** Does it hold? Null where what it takes was not given. */
export function joint(x: Plain<Joint>) {
  const { thread, tensileMpa } = x
  const least = leastRingOf(x)
  const strips = strippingOf(x, least)
  if (x.friction === null) return resultsOf(x, { strips, pulled: UNTIGHTENED, left: UNTIGHTENED, ends: UNTIGHTENED })
  const arms = tightening(thread, { ...x.friction, bearingDiameterMm: bearingMm(x.friction, x.bearing) })
  const pulled = tightened(x, arms, least)
  const ends = highestTorque({ tensileMpa, proofMpa: x.proofMpa, ...strips }, arms, least)
  return resultsOf(x, { strips, pulled, left: margins(x, strips, pulled), ends })
}

export type Engaged = Pick<Joint, 'thread' | 'engagementMm' | 'castingShearMpa' | 'tensileMpa' | 'neckMm' | 'boreMm'>

/** How much has to be engaged, whatever the torque. */
export function engagement(x: Plain<Engaged>) {
  const { engagementRequiredMm, engagementSpareMm } = strippingOf(x, leastRingOf(x))
  return { engagementRequiredMm, engagementSpareMm }
}

function leastRingOf({ thread: { stressAreaMm2 }, boreMm, neckMm }: Plain<Engaged>): Ring {
  return leastRing(threadRing({ stressAreaMm2, boreMm: boreMm ?? 0 }), neckMm)
}

function strippingOf({ thread, engagementMm, castingShearMpa, tensileMpa }: Plain<Engaged>, { ringAreaMm2 }: Ring) {
  return stripping({ thread, engagementMm, castingShearMpa, tensileMpa, netStressAreaMm2: ringAreaMm2 })
}

interface Found {
  readonly strips: ReturnType<typeof stripping>
  readonly pulled: ReturnType<typeof tightened> | typeof UNTIGHTENED
  readonly left: ReturnType<typeof margins> | typeof UNTIGHTENED
  readonly ends: ReturnType<typeof highestTorque> | typeof UNTIGHTENED
}

/** Written out field by field: spreading parts into one took a third of the time of the whole calculation. */
function resultsOf({ thread }: Plain<Joint>, { strips, pulled, left, ends }: Found) {
  return {
    stressAreaMm2: thread.stressAreaMm2,
    internalShearAreaMm2: strips.internalShearAreaMm2,
    externalShearAreaMm2: strips.externalShearAreaMm2,
    internalStripLoadN: strips.internalStripLoadN,
    externalStripLoadN: strips.externalStripLoadN,
    engagementRequiredMm: strips.engagementRequiredMm,
    engagementSpareMm: strips.engagementSpareMm,
    preloadN: pulled.preloadN,
    tensionMpa: pulled.tensionMpa,
    combinedMpa: pulled.combinedMpa,
    bearingPressureMpa: pulled.bearingPressureMpa,
    lowestTorqueNm: pulled.lowestTorqueNm,
    castingMarginN: left.castingMarginN,
    partMarginN: left.partMarginN,
    bodyMarginMpa: left.bodyMarginMpa,
    breakMarginMpa: left.breakMarginMpa,
    castingStripTorqueNm: ends.castingStripTorqueNm,
    partStripTorqueNm: ends.partStripTorqueNm,
    proofTorqueNm: ends.proofTorqueNm,
    breakTorqueNm: ends.breakTorqueNm,
    highestTorqueNm: ends.highestTorqueNm,
    firstToGive: ends.firstToGive
  }
}

function bearingMm({ bearingDiameterMm }: Plain<Friction>, bearing: Plain<Joint>['bearing']): number {
  if (bearingDiameterMm !== null) return bearingDiameterMm
  if (bearing !== null) return bearingDiameterOf(ringOf(bearing))
  throw new Error('a joint without the ring that bears, and without its mean diameter')
}

function ringOf({ faceMm, holeMm, alsoMm = [] }: Plain<Bearing>): { readonly faceMm: number; readonly holeMm: number } {
  return { faceMm, holeMm: Math.max(holeMm, ...alsoMm) }
}

/** Nobody said what the friction is: nothing follows from a torque. */
const UNTIGHTENED = {
  preloadN: null,
  tensionMpa: null,
  combinedMpa: null,
  bearingPressureMpa: null,
  castingMarginN: null,
  partMarginN: null,
  bodyMarginMpa: null,
  breakMarginMpa: null,
  lowestTorqueNm: null,
  castingStripTorqueNm: null,
  partStripTorqueNm: null,
  proofTorqueNm: null,
  breakTorqueNm: null,
  highestTorqueNm: null,
  firstToGive: null
}

function tightened({ torqueNm, clampN, bearing }: Plain<Joint>, { armMm, threadArmMm }: Tightening, ring: Ring) {
  const preloadN = torqueNm === null ? null : pull.preloadN({ torqueNm, armMm })
  const stress = preloadN === null ? null : stresses(ring, { preloadN, threadArmMm })
  return {
    preloadN,
    tensionMpa: stress === null ? null : stress.tensionMpa,
    combinedMpa: stress === null ? null : stress.combinedMpa,
    bearingPressureMpa: preloadN === null || bearing === null ? null : underShoulder(preloadN, ringOf(bearing)),
    lowestTorqueNm: clampN === null ? null : pull.preloadTorqueNm({ armMm, preloadN: clampN })
  }
}

const NO_MARGINS = { castingMarginN: null, partMarginN: null, bodyMarginMpa: null, breakMarginMpa: null }

/** What is left to each thing that may give, at this torque. */
function margins(
  { tensileMpa, proofMpa }: Plain<Joint>,
  { internalStripLoadN, externalStripLoadN }: ReturnType<typeof stripping>,
  { preloadN, combinedMpa }: ReturnType<typeof tightened>
) {
  if (preloadN === null || combinedMpa === null) return NO_MARGINS
  return {
    castingMarginN: strip.castingMarginN({ internalStripLoadN, preloadN }),
    partMarginN: strip.partMarginN({ externalStripLoadN, preloadN }),
    bodyMarginMpa: proofMpa === null ? null : bodyMarginMpa({ proofMpa, combinedMpa }),
    breakMarginMpa: breakMarginMpa({ tensileMpa, combinedMpa })
  }
}

function underShoulder(preloadN: number, { faceMm, holeMm }: { readonly faceMm: number; readonly holeMm: number }): number {
  if (holeMm < faceMm) return bearingPressureMpa({ preloadN, faceMm, holeMm })
  throw new NoAnswer('the hole is as large as the shoulder: nothing bears', 'use a terminal or washer with a smaller hole')
}
