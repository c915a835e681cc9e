import { formula } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { silently } from '../../formula/working.ts'
import type { PracticeName } from '../practice-names.ts'
import { ampacity } from './ampacity.ts'
import { conductorBySize } from './ampacity-conductor.ts'
import type { Conductor } from './conductor.ts'
import { heatedWire } from './heated-wire.ts'
import { type ProtectionGiven, protection } from './protection.ts'
import { overloadedTo } from './protection-heating.ts'
import { type SwitchGiven, switchNeed } from './switch.ts'
import type { Lying, Protector } from './wire.ts'
import { wireShort } from './wire-short.ts'
import { loadedWireC } from './wire-warmth.ts'

export interface GuardedWireGiven extends Lying, Protector, Pick<ProtectionGiven, 'loadA' | 'inrush' | 'faultA' | 'breakingA'> {
  readonly practice: PracticeName
  readonly conductor: Conductor
  /** Where the protector sits. */
  readonly protectorC: Given
  readonly busV: Given | null
  readonly contacts: SwitchGiven | null
  /** Wire between the source and the protector. */
  readonly unprotectedMm: Given | null
}

export const loadRoomA = formula('loadRoomA', {
  says: 'load that a protector may carry beyond the one it has',
  symbol: 'M',
  equation: 'Ip-I',
  inputs: { allowedLoadA: ['Ip', 0, 2000], loadA: ['I', 0, 5000] },
  source: SOURCES.arithmetic,
  of: ({ allowedLoadA, loadA }) => allowedLoadA - loadA
})

/** A protector with the wire behind it: its load, the wire, an inrush, a short at the far end, and the switch in the same run. */
export function guardedWire(x: Plain<GuardedWireGiven>) {
  const { style, ratingA, loadA, practice, insulationC, ambientC, altitudeM, bundleCount, inrush, faultA, breakingA } = x
  const wire = { practice, conductor: conductorBySize(x.conductor.size), insulationC, ambientC, altitudeM, bundleCount }
  const found = protection({ style, ratingA, loadA, ambientC: x.protectorC, wire, inrush, faultA, breakingA })
  const { allowed } = found
  return {
    ratingA,
    loadA,
    faultA,
    inrushA: inrush?.currentA ?? null,
    busV: x.busV,
    unprotectedMm: x.unprotectedMm,
    placeC: x.protectorC,
    ...found,
    loadRoomA: allowed === null || allowed.allowedA === null ? null : loadRoomA({ allowedLoadA: allowed.allowedA, loadA }),
    coolerRoomA: allowed === null ? null : silently(() => loadRoomA({ allowedLoadA: allowed.coolerA, loadA })),
    insulationC: x.insulationC,
    ...heatingOf(x),
    contacts: x.contacts === null ? null : switchNeed(x.contacts)
  }
}

/** How hot the wire gets: at its load, at an overload that is never cleared or only slowly, in a short at its far end. */
function heatingOf({
  style,
  ratingA,
  protectorC: placeC,
  loadA,
  faultA,
  insulationC,
  ambientC,
  conductor,
  ...lies
}: Plain<GuardedWireGiven>) {
  const current = ampacity({ ...lies, insulationC, ambientC, conductor: conductorBySize(conductor.size) })
  if (current.kind === 'no figure') return { loadedC: null, heating: null, short: null }
  const wire = heatedWire({ conductor, current, insulationC, ambientC })
  const loadedC = loadedWireC({ current, currentA: loadA, insulationC, ambientC })
  const opened = faultA === null ? null : wireShort({ style, ratingA, faultA, wire, insulationC, loadedC })
  return {
    loadedC,
    heating: { insulationC, ...overloadedTo({ style, ratingA, placeC, wire, startC: loadedC, limitC: insulationC }) },
    short: faultA === null || opened === null ? null : { faultA, ...opened }
  }
}
