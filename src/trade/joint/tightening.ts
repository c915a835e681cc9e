import type { Plain } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import type { Friction, JointThread } from './joint.ts'
import * as arm from './torque-arm.ts'

/** Torque over preload: the whole of it, and the part that twists the body. */
export interface Tightening {
  readonly armMm: number
  readonly threadArmMm: number
}

type Rubbing = Plain<Friction> & { readonly bearingDiameterMm: number }

export function tightening(thread: JointThread, friction: Rubbing): Tightening {
  return friction.by === 'nut-factor' ? byNutFactor(thread, friction) : byFriction(thread, friction)
}

function byFriction(thread: JointThread, friction: Extract<Rubbing, { by: 'friction' }>): Tightening {
  const { pitchMm, pitchDiameterMm } = thread
  const { threadFrictionFactor, bearingFrictionFactor, bearingDiameterMm } = friction
  const threadArmMm = arm.threadArmMm({ pitchMm, pitchDiameterMm, threadFrictionFactor })
  return { threadArmMm, armMm: arm.longArmMm({ threadArmMm, bearingDiameterMm, bearingFrictionFactor }) }
}

function byNutFactor(thread: JointThread, friction: Extract<Rubbing, { by: 'nut-factor' }>): Tightening {
  const { majorMm, pitchMm, pitchDiameterMm } = thread
  const { nutFactor, bearingDiameterMm } = friction
  const frictionFactor = arm.frictionFactor({ nutFactor, majorMm, pitchMm, pitchDiameterMm, bearingDiameterMm })
  if (frictionFactor < 0) throw belowPitch(nutFactor, pitchMm / (2 * Math.PI * majorMm))
  const threadArmMm = arm.threadArmMm({ pitchMm, pitchDiameterMm, threadFrictionFactor: frictionFactor })
  return { threadArmMm, armMm: arm.nutFactorArmMm({ nutFactor, majorMm }) }
}

function belowPitch(nutFactor: number, leastFactor: number): NoAnswer {
  return new NoAnswer(
    `a nut factor of ${nutFactor.toPrecision(2)} is less than the pitch of this thread takes without any friction`,
    `give a nut factor above ${leastFactor.toPrecision(2)}; a usual one is 0.2`
  )
}
