import { type BoundsOf, boundsOf } from '../../formula/bounds.ts'
import { Given } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { ampacity, type NoFigure } from './ampacity.ts'
import { wireObjections } from './ampacity-candidate.ts'
import { conductorBySize } from './ampacity-conductor.ts'
import { type SmallestAllowed, smallestAllowed } from './ampacity-smallest-wire.ts'
import { type Conductor, type ConductorKind, conductorsOf } from './conductor.ts'
import { BLADE, FUSE_LOAD } from './fuse-blade.ts'
import { ratingChoice } from './protection-rating.ts'
import { type Lying, type WireGiven, wire } from './wire.ts'

/** What a wire is wanted for: all of it but the wire. */
export interface WireWish extends Omit<WireGiven, 'conductor' | 'protector'> {
  readonly kind: ConductorKind
  readonly limit: { readonly value: number; readonly unit: '%' | 'V' } | null
}

export interface WireOffer {
  readonly conductor: Conductor
  readonly given: WireGiven
  /** Null where the size has no answer at all. */
  readonly bounds: BoundsOf<ReturnType<typeof wire>> | null
  readonly smallest: SmallestAllowed
  /** What speaks against it, each number at its worst end; empty where nothing does. */
  readonly rejected: readonly string[]
}

/** Every size of the kind, thinnest first, each with what speaks against it. */
export function wireOffers(wish: WireWish): readonly WireOffer[] {
  return conductorsOf(wish.kind).map(conductor => offerOf(wish, conductor))
}

function offerOf({ kind, limit, ...wanted }: WireWish, conductor: Conductor): WireOffer {
  const smallest = smallestAllowed({ practice: wanted.practice, conductor: conductorBySize(conductor.size), run: 'single' })
  const bare: WireGiven = { ...wanted, conductor, protector: null }
  try {
    const loadA = boundsOf(bare, wire).currentA.high
    const given: WireGiven = { ...bare, protector: usualProtector(loadA, wanted.busV.high) }
    const bounds = boundsOf(given, wire)
    return { conductor, given, bounds, smallest, rejected: objectionsOf({ given, bounds, smallest, limit }) }
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    return { conductor, given: bare, bounds: null, smallest, rejected: [error.says] }
  }
}

/** Where nobody names a protector: the smallest medium blade fuse that carries the load; none above its largest, nor above the voltage that any has. */
function usualProtector(loadA: number, busV: number): WireGiven['protector'] {
  const { ratingA } = ratingChoice({
    style: BLADE,
    loadA,
    ambientC: FUSE_LOAD.ambientC,
    wireLimitA: null,
    heated: null,
    busV,
    inrush: null,
    fault: null,
    breakingA: null
  })
  if (ratingA === null) return null
  return { style: 'blade', ratingA: new Given(ratingA, { assumed: 'default: the smallest blade fuse for this load', at: ['protector'] }) }
}

type Judged = Pick<WireOffer, 'given' | 'smallest'> & Pick<WireWish, 'limit'> & { readonly bounds: NonNullable<WireOffer['bounds']> }

function objectionsOf({ given, bounds, smallest, limit }: Judged): readonly string[] {
  const { ampacityA, currentA, warmDropPercent, warmDropV, short } = bounds
  return wireObjections({
    name: given.conductor.size.name,
    current: ampacityA === null ? noFigure(given) : { ...figure(given), ampacityA: ampacityA.low },
    currentA: currentA.high,
    dropped: limit?.unit === '%' ? warmDropPercent.high : warmDropV.high,
    limit,
    smallest,
    heatingMarginK: short?.marginK.low ?? null,
    short: short === null ? 'not known' : Number.isFinite(short.longestS.high) ? 'opens' : 'may stay shut'
  })
}

/** What the table says of the wire at the nominal. */
export function figureOf({
  practice,
  conductor,
  ...lying
}: Pick<WireGiven, 'practice' | 'conductor' | keyof Lying>): ReturnType<typeof ampacity> {
  return ampacity({
    practice,
    conductor: conductorBySize(conductor.size),
    insulationC: lying.insulationC.value,
    ambientC: lying.ambientC.value,
    altitudeM: lying.altitudeM.value,
    bundleCount: lying.bundleCount.value
  })
}

/** What the current of a wire was looked up by and nobody gave: a table goes in steps, so no small change shows it. */
export function assumedOf({ insulationC, bundleCount, ambientC }: Lying): string | null {
  const assumed = [
    ['insulation', insulationC],
    ['bundle', bundleCount],
    ['ambient', ambientC]
  ] as const
  const names = assumed.filter(([, given]) => given.assumed !== undefined).map(([name, { value }]) => `${name} ${value}`)
  return names.length === 0 ? null : names.join(', ')
}

function figure(given: WireGiven) {
  const found = figureOf(given)
  if (found.kind === 'no figure') throw new Error(`the figure of ${given.conductor.size.name} was lost`)
  return found
}

function noFigure(given: WireGiven): NoFigure {
  const found = figureOf(given)
  return found.kind === 'no figure' ? found : { kind: 'no figure', says: 'no figure within its bounds' }
}

export function noWire(offers: readonly WireOffer[]): NoAnswer {
  const { conductor, rejected } = offers.at(-1)!
  return new NoAnswer(
    `no ${conductor.kind} conductor up to ${conductor.size.name} does it: ${rejected.join('; ')}`,
    'shorten the run, split the load, cool the route or part the bundle; sizes and reasons stand in the table of candidates'
  )
}
