import { SOURCES, type Source } from '../../formula/source.ts'
import { type PracticeName, perPractice } from '../practice-names.ts'
import { type Conductor, conductorName } from './ampacity-conductor.ts'

/** `sheathed`: one of several in a common sheath. */
export type WireRun = 'single' | 'sheathed'

export interface SmallestWire {
  readonly run: WireRun
  readonly conductor: Conductor
  readonly says: string
  readonly source: Source
}

const BY_STRENGTH = 'thinner wire breaks at terminals and in vibration'

const COMMON: readonly SmallestWire[] = [
  { run: 'single', conductor: { standard: 'awg', awg: 20 }, says: BY_STRENGTH, source: SOURCES.practice },
  { run: 'single', conductor: { standard: 'mm2', areaMm2: 0.5 }, says: BY_STRENGTH, source: SOURCES.practice },
  { run: 'sheathed', conductor: { standard: 'awg', awg: 22 }, says: BY_STRENGTH, source: SOURCES.practice },
  { run: 'sheathed', conductor: { standard: 'mm2', areaMm2: 0.35 }, says: BY_STRENGTH, source: SOURCES.practice }
]

const CLAMPED = 'smaller only with high-strength conductors, extra clamps, and beside at least three other wires'

/** Smallest wire that will last, whatever the current. */
export const SMALLEST_WIRES: Readonly<Record<PracticeName, readonly SmallestWire[]>> = perPractice(COMMON, {
  boat: [
    { run: 'single', conductor: { standard: 'awg', awg: 16 }, says: 'run singly', source: SOURCES['33-cfr-183.425-size'] },
    {
      run: 'sheathed',
      conductor: { standard: 'awg', awg: 18 },
      says: 'in a sheath that it leaves by at most 30 in (762 mm)',
      source: SOURCES['33-cfr-183.425-size']
    },
    { run: 'single', conductor: { standard: 'mm2', areaMm2: 1 }, says: 'run singly over more than 200 mm', source: SOURCES['iso-10133'] },
    {
      run: 'sheathed',
      conductor: { standard: 'mm2', areaMm2: 0.75 },
      says: 'in a sheath that it leaves by at most 800 mm',
      source: SOURCES['iso-10133']
    }
  ],
  aircraft: [
    { run: 'single', conductor: { standard: 'awg', awg: 20 }, says: CLAMPED, source: SOURCES['ac-small-wire'] },
    { run: 'sheathed', conductor: { standard: 'awg', awg: 20 }, says: CLAMPED, source: SOURCES['ac-small-wire'] },
    { run: 'single', conductor: { standard: 'mm2', areaMm2: 0.52 }, says: CLAMPED, source: SOURCES['ac-small-wire'] },
    { run: 'sheathed', conductor: { standard: 'mm2', areaMm2: 0.52 }, says: CLAMPED, source: SOURCES['ac-small-wire'] }
  ]
})

export interface SmallestAllowed {
  readonly allowed: 'yes' | 'no'
  readonly smallest: Conductor
  readonly says: string
  readonly source: Source
}

export function smallestAllowed(x: {
  readonly practice: PracticeName
  readonly conductor: Conductor
  readonly run: WireRun
}): SmallestAllowed {
  const row = SMALLEST_WIRES[x.practice].find(row => row.run === x.run && row.conductor.standard === x.conductor.standard)!
  const allowed = sizeOf(x.conductor) >= sizeOf(row.conductor) ? 'yes' : 'no'
  return { allowed, smallest: row.conductor, says: `smallest ${conductorName(row.conductor)}: ${row.says}`, source: row.source }
}

/** Larger for a larger conductor, within one standard. */
function sizeOf(conductor: Conductor): number {
  return conductor.standard === 'awg' ? -conductor.awg : conductor.areaMm2
}
