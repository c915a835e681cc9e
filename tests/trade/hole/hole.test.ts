// property: laws of a blind hole, and its bounds against brute force
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { Given, plainOf } from '../../../src/formula/given.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { firstAt, type Hole, hole } from '../../../src/trade/hole/hole.ts'
import { type Opening, stopSetting } from '../../../src/trade/hole/stop.ts'
import { leavesOf } from '../../formula/leaf-paths.ts'
import { about, atCorners, elbow, numberAt } from './invented.ts'

function planned(changed: Partial<Opening> = {}, more: Partial<Hole> = {}): Hole {
  const { opening, rest } = elbow()
  const opened = { ...opening, ...changed }
  return { ...opened, ...rest, ...more, tipDepthMm: stopSetting(opened).tipDepthMm }
}

const shapes: [name: string, tree: Hole][] = [
  ['the elbow', planned()],
  [
    'a cone felt with a rod, everything loose',
    planned(
      {
        bottom: { shape: 'cone', angleDeg: about(100, 4) },
        rodMm: about(5, 0.1),
        foundDiameterMm: about(9, 0.2),
        drillMm: about(10.2, 0.05),
        pointDeg: about(118, 2)
      },
      { wallMm: about(4, 0.3), taps: [{ name: 'second', chamferTurns: about(4, 0.5), centreMm: about(3, 0.2) }] }
    )
  ],
  ['a fillet', planned({ bottom: { shape: 'radius', filletMm: about(3, 0.2) }, rodMm: about(6, 0.1), drillMm: about(10.2, 0.1) })]
]

describe.each(shapes)('%s', (_, tree) => {
  it('every worst end is the end over all corners', () => {
    const bounds = boundsOf(tree, hole)
    const corners = atCorners(tree, hole)
    for (const { path } of leavesOf(corners[0])) {
      const values = corners.map(results => numberAt(results, path) as number)
      const { low, high } = numberAt(bounds, path) as { low: number; high: number }
      expect([path.join('.'), low]).toEqual([path.join('.'), expect.closeTo(Math.min(...values), 9)])
      expect([path.join('.'), high]).toEqual([path.join('.'), expect.closeTo(Math.max(...values), 9)])
    }
  })

  it('at the worst end the lesser gap is what was to be kept clear', () => {
    const { pointGapMm, rimGapMm } = boundsOf(tree, hole)
    expect(Math.min(pointGapMm.low, rimGapMm.low)).toBeCloseTo(1, 9)
  })

  it('what was not given comes out null and not as a number', () => {
    const results = hole(plainOf({ ...tree, metalBelowMm: null, wallMm: null, needMm: null, taps: [] }).plain)
    expect(results).toMatchObject({ metalLeftMm: null, wallLeftMm: null, taps: [], best: null })
    expect(hole(plainOf({ ...tree, needMm: null }).plain).best).toMatchObject({ needMarginMm: null })
  })
})

// A rod on the fillet of a hole of uncertain width: the gap at the rim is least inside the bounds.
it('where a direction turns inside the bounds, the ends reach beyond all corners and the input is named', () => {
  const tree = planned({ bottom: { shape: 'radius', filletMm: about(3) }, rodMm: about(6), foundDiameterMm: about(9, 0.4) })
  const { rimGapMm } = boundsOf(tree, hole)
  expect(rimGapMm.low).toBeLessThan(Math.min(...atCorners(tree, hole).map(results => results.rimGapMm)) - 1e-6)
  expect(rimGapMm.turned).toEqual([tree.foundDiameterMm])
})

describe('the hole', () => {
  it('metal left, gap and depth add up: what is drilled deeper is missing below', () => {
    const at = (tipMm: number) => hole(plainOf({ ...planned(), tipDepthMm: new Given(tipMm) }).plain)
    const [a, b] = [at(20), at(21.5)]
    expect(b.fullDiameterDepthMm - a.fullDiameterDepthMm).toBeCloseTo(1.5, 9)
    expect(a.metalLeftMm! - b.metalLeftMm!).toBeCloseTo(1.5, 9)
    expect(a.pointGapMm - b.pointGapMm).toBeCloseTo(1.5, 9)
  })

  it('wall left is the wall beside the thread: 4.0 − (12 − 9)/2 = 2.5', () => {
    expect(hole(plainOf(planned({}, { wallMm: about(4) })).plain).wallLeftMm).toBe(2.5)
  })

  it('a drill that goes through the old hole without cutting opens it by less than nothing', () => {
    const openingMm = (drillMm: number) => hole(plainOf(planned({ drillMm: about(drillMm) })).plain).openingMm
    expect([openingMm(8.5), openingMm(9), openingMm(10.5)]).toEqual([-0.5, 0, 1.5])
  })

  it('a front centre has the drilled point and the tap clearance to stand in', () => {
    const taps = [{ name: 'second', chamferTurns: about(4), centreMm: about(3) }]
    const results = hole(plainOf(planned({}, { taps })).plain)
    // 5.1 · cot 59° + 0.6 − 3.0: by hand 3.064 + 0.6 − 3 = 0.664.
    expect(Math.abs(results.taps[0]!.centreGapMm! - 0.664)).toBeLessThanOrEqual(0.0005)
    expect(Math.abs(results.centreRoomMm - 3.664)).toBeLessThanOrEqual(0.0005)
  })

  it('a hole too shallow for the taper tap has less than no thread from it', () => {
    const tree = planned({ foundDepthMm: about(12, 0.5) })
    const [taper, , bottoming] = hole(plainOf(tree).plain).taps
    expect(taper!.threadDepthMm).toBeLessThan(0)
    expect(bottoming!.threadDepthMm).toBeGreaterThan(0)
  })

  it('an inch pitch has the run-out of the next coarser one of the table: 20 to the inch that of 1.5 mm, 7.3', () => {
    expect(hole(plainOf(planned({}, { pitchMm: about(25.4 / 20) })).plain).runOutMm).toBe(7.3)
  })

  it('a default behind the stop shows in what follows from it', () => {
    const keepClearMm = new Given(0.5, { assumed: 'common practice', at: ['keep-clear'] })
    const { metalLeftMm, wallLeftMm } = boundsOf(planned({ keepClearMm }, { wallMm: about(4) }), hole)
    expect(metalLeftMm!.hangsOn.map(({ at }) => at.join('.'))).toEqual(['tip-depth'])
    expect(wallLeftMm!.hangsOn).toEqual([])
  })

  it('leaves a line of working for each figure', () => {
    const { working } = withWorking(() => hole(plainOf(planned()).plain))
    expect(working.map(({ symbol }) => symbol)).toEqual(
      expect.arrayContaining(['h0', 'r', 'w', 'g1', 'g2', 'lp', 'hf', 'm', 'e1', 'lu', 'lt', 'z'])
    )
    expect(working.find(({ symbol }) => symbol === 'lp')?.putIn).toBe('10.2/2·cot(118/2)')
    expect(working.find(({ symbol }) => symbol === 'gmin')?.putIn).toBe('the lesser of g1 and g2')
  })
})

it('says where the drill would meet the old bottom first', () => {
  expect([firstAt(0.001), firstAt(-0.001), firstAt(0)]).toEqual(['point', 'rim', 'point and rim alike'])
})

it('a drill as sharp as the old cone meets it all along', () => {
  expect(hole(plainOf(planned({ bottom: { shape: 'cone', angleDeg: about(118) } })).plain).first).toBe('point and rim alike')
})

it.each([
  ['a flat drill point in a cone is nearest at the rim', { bottom: { shape: 'cone', angleDeg: about(118) }, pointDeg: about(140) }, 'rim'],
  ['a sharp one at the point', { bottom: { shape: 'cone', angleDeg: about(140) }, pointDeg: about(118) }, 'point']
] as const)('%s, and that gap is the least', (_, changed, first) => {
  const results = hole(plainOf(planned(changed)).plain)
  expect(results.first).toBe(first)
  expect(results.leastGapMm).toBe(first === 'rim' ? results.rimGapMm : results.pointGapMm)
  expect(results.leastGapMm).toBeLessThan(first === 'rim' ? results.pointGapMm : results.rimGapMm)
})

it('the tap with the shortest chamfer leaves most thread, wherever it stands, and more than is wanted by its margin', () => {
  const taps = [1.5, 8, 4].map(turns => ({ name: `of ${turns}`, chamferTurns: about(turns), centreMm: null }))
  for (const order of [taps, taps.toReversed()]) {
    const { best, ...results } = hole(plainOf(planned({}, { taps: order, needMm: about(5) })).plain)
    expect(best).toMatchObject({ name: 'of 1.5', needMarginMm: expect.closeTo(best!.threadDepthMm - 5, 9) })
    expect(results.taps.every(({ threadDepthMm }) => threadDepthMm <= best!.threadDepthMm)).toBe(true)
  }
})
