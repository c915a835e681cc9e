import type { Given } from '../../formula/given.ts'
import { type Drawn, pointText } from './drawn.ts'
import { type Fault, withElement } from './fault.ts'

/** Where nobody gave bounds, less than this is no fault. */
const ABOUT = 0.01
const LEAST_SHARE = 0.2
const MOST_SHARE = 1.4

/** A bus outside what the source may give. */
export function sourceFaults({ bus, ground, sourceId }: Drawn, { value, low, high }: Given): readonly Fault[] {
  const ends = [
    ['low', LEAST_SHARE * value, Math.min(low, (1 - ABOUT) * value)],
    ['high', Math.max(high, (1 + ABOUT) * value), MOST_SHARE * value]
  ] as const
  return ends
    .filter(([, least, greatest]) => least < greatest)
    .map(([word, least, greatest]) => ({
      id: `bus-${word}@${bus}`,
      kind: `bus-${word}`,
      at: pointText({ red: bus, black: ground }),
      says: `source ${word}: ${bus}`,
      sizes: { by: 'range', low: least, high: greatest },
      sizeSays: 'voltage of the source',
      unit: 'V',
      changes: (tested, sourceV) =>
        withElement(tested, sourceId, element => (element.kind === 'source' ? { ...element, sourceV } : element))
    }))
}
