import type { Given } from '../../formula/given.ts'
import { type Drawn, pointText } from './drawn.ts'
import { type Fault, withElement } from './fault.ts'

/** Where nobody gave bounds, less than this is no fault. */
const ABOUT = 0.01
/** Less of its voltage is none: a main switch, a main fuse, a battery that is off. */
const DEAD_SHARE = 0.2
const NOTHING_SHARE = 1e-5
/** More of it is no generator out of order: another system, or two batteries in series. */
const OTHER_SHARE = 1.4
const MOST_SHARE = 2.6

/** A bus outside what the source may give. */
export function sourceFaults(drawn: Drawn, sourceV: Given): readonly Fault[] {
  return rangesOf(sourceV)
    .filter(({ least, greatest }) => least < greatest)
    .map(range => sourceFault(drawn, range))
}

interface Range {
  readonly kind: 'bus-dead' | 'bus-low' | 'bus-high' | 'bus-other' | 'bus-turned'
  readonly says: string
  readonly least: number
  readonly greatest: number
}

function rangesOf({ value, low, high }: Given): readonly Range[] {
  const [below, above] = [Math.min(low, (1 - ABOUT) * value), Math.max(high, (1 + ABOUT) * value)]
  return [
    { kind: 'bus-dead', says: 'source dead', least: NOTHING_SHARE * value, greatest: Math.min(low, DEAD_SHARE * value) },
    { kind: 'bus-low', says: 'source low', least: DEAD_SHARE * value, greatest: below },
    { kind: 'bus-high', says: 'source high', least: above, greatest: OTHER_SHARE * value },
    { kind: 'bus-other', says: 'source of another voltage', least: Math.max(high, OTHER_SHARE * value), greatest: MOST_SHARE * value },
    { kind: 'bus-turned', says: 'source, or both leads in every reading, the wrong way round', least: below, greatest: above }
  ]
}

function sourceFault({ bus, ground, sourceId }: Drawn, { kind, says, least, greatest }: Range): Fault {
  return {
    id: `${kind}@${bus}`,
    kind,
    at: pointText({ red: bus, black: ground }),
    says: `${says}: ${bus}`,
    sizes: { by: 'range', low: least, high: greatest },
    sizeSays: 'voltage of the source',
    unit: 'V',
    changes: (tested, size) =>
      withElement(tested, sourceId, element =>
        element.kind === 'source' ? { ...element, sourceV: kind === 'bus-turned' ? -size : size } : element
      )
  }
}
