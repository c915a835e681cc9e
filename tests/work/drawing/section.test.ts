// example: the drawing has the figures of the hole and of the seat. Status: invented data
import { describe, expect, it } from 'vitest'
import { Given, plainOf } from '../../../src/formula/given.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { depthAt } from '../../../src/report/drawing/section.ts'
import { hole } from '../../../src/trade/hole/hole.ts'
import { seat } from '../../../src/trade/hole/seat.ts'
import { stopSetting } from '../../../src/trade/hole/stop.ts'
import { holeSection } from '../../../src/work/drawing/hole-section.ts'
import { seatSection } from '../../../src/work/drawing/seat-section.ts'
import { about, elbow, terminal } from '../../trade/hole/invented.ts'

const { opening, rest } = elbow()

function drawn(more: Partial<typeof opening> = {}, other: Partial<typeof rest> = {}) {
  const tree = { ...opening, ...more, ...rest, ...other }
  const { plain } = plainOf({ ...tree, tipDepthMm: stopSetting(tree).tipDepthMm })
  return holeSection('M12x1.75', plain, hole(plain))
}

describe('a hole', () => {
  it('is drawn from its own figures', () => {
    const section = drawn({}, { wallMm: about(5) })
    expect(section.drilled[0]).toEqual([0, 22.2])
    expect(section.found.at(-1)).toEqual([4.5, 0])
    // 24 + 6, and 4.5 + 5.
    expect([section.backMm, section.sideMm]).toEqual([30, 9.5])
    expect(section.marks.map(({ text }) => text)).toEqual([
      '15.91 full thread, bottoming',
      '19.13 full diameter',
      '22.20 tip at the stop',
      '24.00 old bottom',
      '30.00 behind the metal'
    ])
    // The tip stops 1.8 mm above the old bottom: what is metal are the 6 mm below that.
    expect(section.says).toContain('6.00 mm of metal left below the hole')
  })

  // A cone of 90° rises by its radius to the wall; a ball end of 4.5 mm by as much, and by 4.5 − √(4.5² − 2.25²) = 0.603 halfway.
  it.each([
    ['a cone', { bottom: { shape: 'cone', angleDeg: new Given(90) } } as const, 2.25, 2.25],
    ['a round bottom', { bottom: { shape: 'radius', filletMm: new Given(4.5) } } as const, 2.25, 0.603]
  ])('%s follows its form', (_, more, radiusMm, risesMm) => {
    const { found } = drawn({ ...more, rodMm: about(0) })
    expect(depthAt(found, 0) - depthAt(found, radiusMm)).toBeCloseTo(risesMm, 2)
    expect(depthAt(found, 0) - depthAt(found, 4.5)).toBeCloseTo(4.5, 9)
  })

  it('leaves out what is not known, and a thread that is none', () => {
    const section = drawn({}, { metalBelowMm: null, taps: [] })
    expect([section.backMm, section.sideMm, section.thread]).toEqual([null, null, null])
    expect(section.says).not.toContain('metal left')
  })

  it('leaves no line in the working', () => {
    const { plain } = plainOf({ ...opening, ...rest, tipDepthMm: stopSetting(opening).tipDepthMm })
    const results = hole(plain)
    expect(withWorking(() => holeSection('x', plain, results)).working).toEqual([])
  })
})

const m12 = { name: 'M12x1.5', majorMm: 12, minorMm: 10.376 }

describe('a seat', () => {
  it('stands on its stack', () => {
    const { plain } = plainOf(terminal())
    const section = seatSection(m12, plain, seat(plain))
    // 15.6 of thread over 1.2 of terminal in 15.0 of thread.
    expect(section.part).toMatchObject({ threadEndMm: expect.closeTo(14.4, 9), stackMm: 1.2 })
    expect(section.marks.map(({ text }) => text)).toEqual(["14.40 end of the part's thread", '15.00 end of full thread in the hole'])
    expect(section.says).toContain('0.60 mm of room before the thread runs out')
  })

  it('says what stops it', () => {
    const { plain } = plainOf({ ...terminal(), stack: [], floor: { overallMm: about(17), floorDepthMm: about(16) } })
    expect(seatSection(m12, plain, seat(plain)).says).toMatch(/thread runs out stops it 0\.60 mm short; the floor stops it 1\.00 mm short/)
  })
})
