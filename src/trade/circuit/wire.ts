import { formula } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import type { PracticeName } from '../practice-names.ts'
import { type Ampacity, ampacity, type NoFigure } from './ampacity.ts'
import { conductorBySize } from './ampacity-conductor.ts'
import type { Conductor } from './conductor.ts'
import * as copper from './copper.ts'
import { drop, type FedLoad } from './drop.ts'
import * as feed from './feed.ts'
import { heatedWire } from './heated-wire.ts'
import type { StyleId } from './protection-style.ts'
import { conductorOhmPerM } from './wire-resistance.ts'
import * as short from './wire-short.ts'
import { loadedWireC } from './wire-warmth.ts'

/** How a wire lies, which settles what it carries. */
export interface Lying {
  readonly insulationC: Given
  readonly ambientC: Given
  readonly altitudeM: Given
  /** Loaded wires lying together, this one counted. */
  readonly bundleCount: Given
}

export interface Protector {
  readonly style: StyleId
  readonly ratingA: Given
}

export interface WireGiven extends Lying {
  readonly practice: PracticeName
  readonly conductor: Conductor
  /** One way; the return is a wire of the same size and length. */
  readonly lengthM: Given
  readonly busV: Given
  readonly load: FedLoad
  readonly protector: Protector | null
}

export const spareA = formula('spareA', {
  says: 'what the wire carries for good beyond its current',
  symbol: 'M',
  equation: 'Ia-I',
  inputs: { ampacityA: ['Ia', 0, 2000], currentA: ['I', 0, 1e5] },
  source: SOURCES.arithmetic,
  of: ({ ampacityA, currentA }) => ampacityA - currentA
})

/** One size of wire under its load: what it carries, what it drops cold and warmed by its current, how hot a short makes it. */
export function wire(x: Plain<WireGiven>) {
  const { conductor, lengthM, ambientC, insulationC, busV, load } = x
  const current = ampacity({ ...x, conductor: conductorBySize(conductor.size) })
  const asWired = { conductor, lengthM, back: { by: 'wire', returnM: lengthM }, jointsOhm: 0, load } as const
  const { currentA, dropV, dropPercent } = drop({ ...asWired, conductorC: ambientC })
  const loadedC = loadedWireC({ current, currentA, insulationC, ambientC })
  const warm = drop({ ...asWired, conductorC: loadedC })
  return {
    ampacityA: current.kind === 'ampacity' ? current.ampacityA : null,
    printedA: current.kind === 'ampacity' ? current.printedA : null,
    spareA: current.kind === 'ampacity' ? spareA({ ampacityA: current.ampacityA, currentA }) : null,
    currentA,
    dropV,
    dropPercent: dropPercent!,
    loadedC,
    warmDropV: warm.dropV,
    warmDropPercent: warm.dropPercent!,
    short: shortOf(x, { current, loadedC, busV })
  }
}

interface Loaded {
  readonly current: Ampacity | NoFigure
  readonly loadedC: number
  readonly busV: number
}

/** A short at the far end, in wire as hot as its insulation allows: the least current that a short there can have. */
function shortOf({ conductor, lengthM, insulationC, ambientC, protector }: Plain<WireGiven>, { current, loadedC, busV }: Loaded) {
  if (protector === null || current.kind === 'no figure') return null
  const wire = heatedWire({ conductor, current, insulationC, ambientC })
  const hotOhmPerM = copper.hotOhmPerM({ conductorOhmPerM: conductorOhmPerM(conductor), conductorC: insulationC })
  const loopOhm = feed.loopOhm({ hotOhmPerM, lengthM, returnM: lengthM, jointsOhm: 0 })
  if (loopOhm < NO_LENGTH_OHM) return null
  const faultA = short.shortA({ busV, loopOhm })
  const opened = short.wireShort({ ...protector, faultA, wire, insulationC, loadedC })
  return opened === null ? null : { faultA, ...opened }
}

const NO_LENGTH_OHM = short.shortA.inputs.loopOhm[1]
