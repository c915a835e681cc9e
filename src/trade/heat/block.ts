import type { Given, Plain } from '../../formula/given.ts'
import { type CastingLoss, outAt, outOf } from './casting-loss.ts'
import { buoyancyAt, type Film } from './film.ts'
import { allW, asOne, type Body, bodiesC, partC } from './heated-parts.ts'
import * as heating from './heating.ts'
import { type TwoNode, twoNode } from './two-node.ts'
import { warmUp } from './warm-up.ts'

/** Heat that a casting stores: fitted to a heat test, or by its mass. */
export type Capacity =
  | { readonly by: 'test'; readonly capacityJPerK: Given }
  | { readonly by: 'mass'; readonly massKg: Given; readonly heatJPerKgK: Given; readonly metal: Metal | null }

/** What the Biot number needs. */
interface Metal {
  readonly densityKgPerM3: Given
  readonly conductivityWPerMK: Given
}

/** Heat that it loses: fitted to a heat test in air of the same kind, or by its surface. The machine behind it is as the air around. */
export type Loss =
  | { readonly by: 'test'; readonly lossWPerK: Given }
  | {
      readonly by: 'surface'
      readonly areaM2: Given
      readonly film: Film
      readonly emissivityRatio: Given | null
      readonly machineWPerK: Given | null
    }

type Surface = Extract<Plain<Loss>, { readonly by: 'surface' }>

export interface Block {
  readonly capacity: Capacity
  readonly loss: Loss
  /** On the way told apart only where neither capacity nor loss comes from a test. */
  readonly body: Body | null
}

/** The air at the casting, and what stands around. */
export interface Around {
  readonly airC: number
  readonly machineC: number
  readonly altitudeM: number
}

interface Course extends Around {
  readonly heatersW: readonly number[]
  readonly startC: number
  readonly targetC: number | null
}

/** Where a block settles and how soon, and how far above it the heated parts, where they are told apart. */
export function warmBlock(block: Plain<Block>, course: Course) {
  const pair = asPair(block, course)
  const warmed = pair === null ? oneBody(block, course) : twoBodies(pair, block, course)
  const bodies = bodiesC(block.body, warmed.steadyC, course.heatersW)
  return { ...warmed, bodiesC: bodies, partC: partC(warmed.steadyC, bodies) }
}

function oneBody({ capacity, loss }: Plain<Block>, course: Course) {
  const { heatersW, startC, targetC, airC } = course
  const powerW = allW(heatersW)
  const out = loss.by === 'test' ? { outWPerK: loss.lossWPerK, outC: airC, filmWPerM2K: null } : outOf(castingLoss(loss, course), powerW)
  const capacityJPerK = capacity.by === 'test' ? capacity.capacityJPerK : heating.capacityJPerK(capacity)
  const warmed = warmUp({ powerW, capacityJPerK, lossWPerK: out.outWPerK, airC: out.outC, startC, targetC })
  const { steadyC, timeConstantS, holdMarginK, timeToTargetS } = warmed
  const figures = filmFigures({ capacity, loss }, course, { steadyC, filmWPerM2K: out.filmWPerM2K })
  return { steadyC, timeConstantS, holdMarginK, timeToTargetS, ...figures }
}

function twoBodies(pair: Plain<TwoNode>, block: Plain<Block>, course: Course) {
  const { castingC: steadyC, slowS: timeConstantS, holdMarginK, timeToTargetS, filmWPerM2K } = twoNode(pair)
  const figures = filmFigures(block, course, { steadyC, filmWPerM2K })
  return { steadyC, timeConstantS, holdMarginK, timeToTargetS, ...figures }
}

/** A block as a pair of bodies, where it is told as one. */
export function asPair({ capacity, loss, body }: Plain<Block>, course: Course): Plain<TwoNode> | null {
  if (body === null || capacity.by === 'test' || loss.by === 'test') return null
  const { heatersW, startC, targetC } = course
  const parts = asOne(body, heatersW.length)
  return { powerW: allW(heatersW), body: parts, casting: capacity, joint: parts, loss: castingLoss(loss, course), startC, targetC }
}

/** Film, and the two numbers that tell how far it and the one temperature may be trusted. */
function filmFigures(
  { capacity, loss }: Omit<Plain<Block>, 'body'>,
  { airC, altitudeM }: Around,
  { steadyC, filmWPerM2K }: { readonly steadyC: number; readonly filmWPerM2K: number | null }
) {
  if (loss.by === 'test' || filmWPerM2K === null) return { filmWPerM2K: null, buoyancyRatio: null, biotRatio: null }
  const buoyancyRatio = buoyancyAt(loss.film, { surfaceC: steadyC, airC, altitudeM })
  const metal = capacity.by === 'mass' ? capacity.metal : null
  if (capacity.by !== 'mass' || metal === null) return { filmWPerM2K, buoyancyRatio, biotRatio: null }
  const { densityKgPerM3, conductivityWPerMK } = metal
  const { massKg } = capacity
  return {
    filmWPerM2K,
    buoyancyRatio,
    biotRatio: heating.biotRatio({ filmWPerM2K, massKg, densityKgPerM3, areaM2: loss.areaM2, conductivityWPerMK })
  }
}

/** Heat lost by one kelvin at a surface temperature. */
export function lossAtWPerK(loss: Plain<Loss>, around: Around, surfaceC: number): number {
  return loss.by === 'test' ? loss.lossWPerK : outAt(castingLoss(loss, around), surfaceC).outWPerK
}

function castingLoss(loss: Surface, { airC, machineC, altitudeM }: Around): Plain<CastingLoss> {
  const { areaM2, film, emissivityRatio, machineWPerK } = loss
  return { areaM2, film, emissivityRatio, airC, altitudeM, machine: machineWPerK === null ? null : { machineWPerK, machineC } }
}
