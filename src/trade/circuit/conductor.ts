import { SOURCES, type Source } from '../../formula/source.ts'
import { silently } from '../../formula/working.ts'
import { bad, good, type Outcome } from '../../quantity/fault.ts'
import type { PracticeName } from '../practice-names.ts'
import { AIRCRAFT } from './aircraft-rows.ts'
import * as copper from './copper.ts'
import { CLASS_2, CLASS_5, ISO_6722, type MetricRow } from './metric-rows.ts'
import { gaugeSize, sectionSize, type WireSize } from './wire-size.ts'

/** How the copper in a wire is made up, which settles whose resistance it has. */
export const CONDUCTOR_KINDS = ['class-5', 'class-2', 'iso-6722', 'solid', 'aircraft'] as const
export type ConductorKind = (typeof CONDUCTOR_KINDS)[number]

interface Tabled {
  readonly kind: Exclude<ConductorKind, 'solid'>
  readonly size: WireSize
  /** Greatest resistance at 20 °C. */
  readonly conductorOhmPerM: number
  readonly source: Source
  readonly sectionMm2: number
  readonly sectionSource: Source
}

interface Solid {
  readonly kind: 'solid'
  readonly size: WireSize
  readonly gaugeCount: number
  readonly source: Source
}

/** A wire whose resistance is known: a row of its table, or solid copper by its gauge number. */
export type Conductor = Tabled | Solid

const MM2_PER_CIRCULAR_MIL = (Math.PI / 4) * 0.0254 ** 2 // a circle one thousandth of an inch across
const M_PER_THOUSAND_FT = 304.8 // exact by definition

/** The solid gauges that are drawn for cable, thinnest first; `conductorOf` takes those between as well. */
const DRAWN = [30, 28, 26, 24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3]

/** Every conductor of one kind, thinnest first. */
export function conductorsOf(kind: ConductorKind): readonly Conductor[] {
  switch (kind) {
    case 'class-5':
      return CLASS_5.map(row => metric(kind, row))
    case 'class-2':
      return CLASS_2.map(row => metric(kind, row))
    case 'iso-6722':
      return ISO_6722.map(row => metric(kind, row))
    case 'solid':
      return DRAWN.map(solid)
    case 'aircraft':
      return AIRCRAFT.map(aircraft)
  }
}

/** The kind that is meant where nobody names one: mm² is sold as class 5, a gauge is by definition solid, and in aircraft that of its table. */
export function usualKind({ system }: WireSize, practice?: PracticeName): ConductorKind {
  if (system === 'mm2') return 'class-5'
  return practice === 'aircraft' ? 'aircraft' : 'solid'
}

/** What is taken for granted of a gauge that nobody told the make-up of. */
export const AS_SOLID = 'solid: strands of the same gauge may resist a quarter more'

/** The conductor of this size and kind, or in words which sizes that kind has. */
export function conductorOf({ size, kind }: { readonly size: WireSize; readonly kind: ConductorKind }): Outcome<Conductor> {
  if (kind === 'solid' && size.system === 'awg') return good(solid(size.gaugeCount))
  const found = conductorsOf(kind).find(conductor => conductor.size.name === size.name)
  return found === undefined ? noSuchSize(size, kind) : good(found)
}

function noSuchSize(size: WireSize, kind: ConductorKind): Outcome<Conductor> {
  const wanted = nominalMm2(size)
  const all = conductorsOf(kind).map(conductor => ({ name: conductor.size.name, mm2: sectionOf(conductor) }))
  const sizes = [all.findLast(({ mm2 }) => mm2 < wanted), all.find(({ mm2 }) => mm2 > wanted)].filter(one => one !== undefined)
  const near = sizes.reduce((a, b) => (a.mm2 * b.mm2 < wanted ** 2 ? b : a)).name
  const area = size.system === 'awg' ? ` (${size.name} is ${wanted.toPrecision(3)} mm2)` : ''
  const others = CONDUCTOR_KINDS.filter(other => conductorsOf(other).some(conductor => conductor.size.name === size.name))
  const made = others.length > 0 ? `; ${size.name} is made as ${others.join(', ')}` : ''
  return bad(`no ${kind} conductor of ${size.name}`, `${sizes.map(({ name }) => name).join(' or ')}${area}${made}`, near)
}

function nominalMm2(size: WireSize): number {
  return size.system === 'mm2' ? size.sectionMm2 : sectionOf(solid(size.gaugeCount))
}

function sectionOf(conductor: Conductor): number {
  if (conductor.kind !== 'solid') return conductor.sectionMm2
  return silently(() => copper.solidMm2({ solidMm: copper.solidMm(conductor) }))
}

function metric(kind: Tabled['kind'], [sectionMm2, ohmPerKm, from]: MetricRow): Conductor {
  const source = SOURCES[from]
  return { kind, size: sectionSize(sectionMm2), conductorOhmPerM: ohmPerKm / 1000, source, sectionMm2, sectionSource: source }
}

function solid(gaugeCount: number): Conductor {
  return { kind: 'solid', size: gaugeSize(gaugeCount), gaugeCount, source: SOURCES['astm-b258'] }
}

function aircraft([gaugeCount, ohmPerThousandFt, circularMils, areaFrom]: (typeof AIRCRAFT)[number]): Conductor {
  return {
    kind: 'aircraft',
    size: gaugeSize(gaugeCount),
    conductorOhmPerM: ohmPerThousandFt / M_PER_THOUSAND_FT,
    source: SOURCES['ac-43.13-1b-11-9'],
    sectionMm2: circularMils * MM2_PER_CIRCULAR_MIL,
    sectionSource: SOURCES[areaFrom]
  }
}
