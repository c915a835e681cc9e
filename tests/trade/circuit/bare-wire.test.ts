// example: wire without a protector before it, by hand in invented circuits; places against 33 CFR 183.455 (read-secondary): 7 in, 40 in sheathed
import { describe, expect, it } from 'vitest'
import { bareWays, farPoints, placeOf, type Stretch } from '../../../src/trade/circuit/bare-wire.ts'
import { PROTECTOR_PLACES } from '../../../src/trade/circuit/protection-place.ts'

const wire = (id: string, from: string, to: string, lengthMm: number, more: Partial<Stretch> = {}): Stretch => ({
  ...{ id, from, to, lengthMm, protects: 'no', sheathed: 'no' },
  ...more
})
const STOPS = new Set(['frame', 'bus', 'aux'])
const far = (stretches: readonly Stretch[], start = 'bus') =>
  farPoints(bareWays(start, STOPS, stretches), 'frame', stretches, PROTECTOR_PLACES.boat)

describe('ways from a source', () => {
  const stretches = [
    wire('long', 'bus', 'panel', 900),
    wire('a', 'bus', 'mid', 100),
    wire('b', 'panel', 'mid', 50),
    wire('fuse', 'panel', 'fused', 0, { protects: 'yes' }),
    wire('home', 'panel', 'frame', 10),
    wire('strap', 'frame', 'engine', 10),
    wire('jumper', 'panel', 'aux', 10),
    wire('beyond', 'aux', 'lamp', 10)
  ]
  const ways = bareWays('bus', STOPS, stretches)

  it('take the shortest, whichever way round a wire was drawn', () => {
    expect(ways.get('panel')?.lengthMm).toBe(150)
    expect(ways.get('panel')?.stretches.map(({ id }) => id)).toEqual(['a', 'b'])
  })
  it('end at a protector, at the 0 V node and at another source', () => {
    expect([...ways.keys()].sort()).toEqual(['aux', 'bus', 'frame', 'mid', 'panel'])
  })
})

describe('what is too far', () => {
  it.each([
    ['within 7 in', [wire('lead', 'bus', 'panel', 177)], []],
    ['beyond them', [wire('lead', 'bus', 'panel', 179)], ['panel']],
    ['two of them in a row', [wire('lead', 'bus', 'tee', 100), wire('on', 'panel', 'tee', 100)], ['panel']],
    ['39 in of sheathed wire', [wire('lead', 'bus', 'panel', 990, { sheathed: 'yes' })], []],
    ['41 in of it', [wire('lead', 'bus', 'panel', 1041, { sheathed: 'yes' })], ['panel']],
    ['sheathed for a part of the way', [wire('lead', 'bus', 'tee', 300, { sheathed: 'yes' }), wire('on', 'tee', 'panel', 10)], ['panel']],
    ['a joint is no wire', [wire('lead', 'bus', 'tee', 300, { sheathed: 'yes' }), wire('lug', 'tee', 'panel', 0)], []],
    ['a wire to the other source', [wire('jumper', 'aux', 'bus', 3000)], ['aux']],
    ['a long way beside a short one', [wire('lead', 'bus', 'panel', 100), wire('round', 'bus', 'panel', 5000)], ['panel']],
    ['behind a fuse at once', [wire('fuse', 'bus', 'fused', 0, { protects: 'yes' }), wire('on', 'fused', 'lamp', 5000)], []]
  ])('%s', (_, stretches, points) => expect(far(stretches)).toEqual(points))

  it('a wire between two sources is too far from each of them', () => {
    expect(far([wire('jumper', 'aux', 'bus', 3000)], 'aux')).toEqual(['bus'])
  })
})

it('the words for sheathed wire hold where all of it is', () => {
  expect(placeOf({ lengthMm: 10, sheathed: 'yes' }, PROTECTOR_PLACES.boat)).toBe(PROTECTOR_PLACES.boat.sheathed)
  expect(placeOf({ lengthMm: 10, sheathed: 'no' }, PROTECTOR_PLACES.boat)).toBe(PROTECTOR_PLACES.boat.open)
  expect(placeOf({ lengthMm: 0, sheathed: 'yes' }, PROTECTOR_PLACES.boat)).toBe(PROTECTOR_PLACES.boat.open)
})
