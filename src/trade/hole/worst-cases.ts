import { Given } from '../../formula/given.ts'
import type { Bottom } from './old-bottom.ts'
import type { OldHole } from './old-hole.ts'

/**
 * The same opening with drill and bottom held at each of their ends, and the rod at its least, where the stop is always lowest.
 * Neither of the two has its worst value between its ends, but which end it is may hang on the others. What is left is one input,
 * the width of the old hole, with one worst value, and inputs whose direction never changes.
 */
export function worstCases<T extends OldHole>(opening: T): readonly T[] {
  const { drillMm, bottom, rodMm, foundDiameterMm } = opening
  const fixed = { rodMm: held(rodMm, rodMm.low), foundDiameterMm: admitting(foundDiameterMm, rodMm.low) }
  return endsOf(drillMm).flatMap(end => bottomEnds(bottom).map(shape => ({ ...opening, ...fixed, drillMm: end, bottom: shape })))
}

function bottomEnds(bottom: Bottom): readonly Bottom[] {
  switch (bottom.shape) {
    case 'flat':
      return [bottom]
    case 'cone':
      return endsOf(bottom.angleDeg).map(angleDeg => ({ shape: 'cone', angleDeg }))
    case 'radius':
      return endsOf(bottom.filletMm).map(filletMm => ({ shape: 'radius', filletMm }))
    default:
      return bottom satisfies never
  }
}

function endsOf(given: Given): readonly Given[] {
  return given.low < given.high ? [held(given, given.low), held(given, given.high)] : [given]
}

function held({ assumed, at }: Given, value: number): Given {
  return new Given(value, { assumed, at })
}

/** A hole is no narrower than the rod that went in. */
function admitting({ value, low, high, assumed, at }: Given, rodMm: number): Given {
  return new Given(Math.max(value, rodMm), { low: Math.max(low, rodMm), high, assumed, at })
}
