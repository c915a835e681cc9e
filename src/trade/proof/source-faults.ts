import type { Given } from '../../formula/given.ts'
import { type DrawnSource, pointText } from './drawn.ts'
import { type Fault, OPEN_OHM, withElement } from './fault.ts'

/** Where nobody gave bounds, less than this is no fault. */
const ABOUT = 0.01
/** Less of its voltage is none: a main switch, a main fuse, a battery that is off. */
const DEAD_SHARE = 0.2
const NOTHING_SHARE = 1e-5
/** More of it is no generator out of order: another system, or two batteries in series. */
const OTHER_SHARE = 1.4
const MOST_SHARE = 2.6

interface Source extends DrawnSource {
  readonly sourceV: Given
}

/** Each source outside what it may give. Beside others it may be off as well: no current flows back through it then. */
export function sourceFaults(sources: readonly Source[]): readonly Fault[] {
  const alone = sources.length === 1
  return sources.flatMap(source => [
    ...rangesOf(source.sourceV, alone)
      .filter(({ least, greatest }) => least > 0 && least < greatest)
      .map(range => sourceFault(source, range)),
    ...(alone ? [] : [openSource(source)])
  ])
}

interface Range {
  readonly kind: 'source-dead' | 'source-low' | 'source-high' | 'source-other' | 'source-turned'
  readonly says: string
  readonly least: number
  readonly greatest: number
}

function rangesOf({ value, low, high }: Given, alone: boolean): readonly Range[] {
  const [below, above] = [Math.min(low, (1 - ABOUT) * value), Math.max(high, (1 + ABOUT) * value)]
  const nothing = NOTHING_SHARE * value
  const turned = alone ? 'source, or both leads in every reading, the wrong way round' : 'source the wrong way round'
  return [
    { kind: 'source-dead', says: 'source dead', least: nothing, greatest: Math.min(low, DEAD_SHARE * value) },
    { kind: 'source-low', says: 'source low', least: DEAD_SHARE * value, greatest: below },
    { kind: 'source-high', says: 'source high', least: above, greatest: OTHER_SHARE * value },
    { kind: 'source-other', says: 'source of another voltage', least: Math.max(high, OTHER_SHARE * value), greatest: MOST_SHARE * value },
    { kind: 'source-turned', says: turned, least: Math.max(nothing, below), greatest: above }
  ]
}

function sourceFault(source: Source, { kind, says, least, greatest }: Range): Fault {
  return {
    id: `${kind}@${source.name}`,
    kind,
    at: placeOf(source),
    says: `${says}: ${source.name}`,
    sizes: { by: 'range', low: least, high: greatest },
    sizeSays: 'voltage of the source',
    unit: 'V',
    changes: (tested, size) =>
      withElement(tested, source.id, element =>
        element.kind === 'source' ? { ...element, sourceV: kind === 'source-turned' ? -size : size } : element
      )
  }
}

function openSource(source: Source): Fault {
  return {
    id: `open@source ${source.name}`,
    kind: 'open',
    at: placeOf(source),
    says: `source off: ${source.name}`,
    sizes: { by: 'none' },
    sizeSays: '',
    unit: '',
    changes: tested =>
      withElement(tested, source.id, element => (element.kind === 'source' ? { ...element, insideOhm: OPEN_OHM } : element))
  }
}

function placeOf({ from, to }: Source): string {
  return pointText({ red: to, black: from })
}
