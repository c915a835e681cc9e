import fc from 'fast-check'
import { Given } from '../../../src/formula/given.ts'
import type { Bottom } from '../../../src/trade/hole/old-bottom.ts'
import type { Opening } from '../../../src/trade/hole/stop.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true })

/** A number with bounds of its own on each side, or none. */
const loose = (min: number, max: number, off: number) =>
  fc.tuple(between(min, max), fc.option(fc.tuple(between(0, off), between(0, off)))).map(([value, offs]) => {
    return offs === null ? new Given(value) : new Given(value, { low: value - offs[0], high: value + offs[1] })
  })

const bottom = (foundMm: number): fc.Arbitrary<Bottom> =>
  fc.oneof(
    fc.constant<Bottom>({ shape: 'flat' }),
    loose(70, 160, 5).map(angleDeg => ({ shape: 'cone' as const, angleDeg })),
    fc
      .oneof(loose(0.1 * foundMm, 0.5 * foundMm, 0.04 * foundMm), loose(0.5 * foundMm, 0.5 * foundMm, 0.04 * foundMm))
      .map(filletMm => ({ shape: 'radius' as const, filletMm }))
  )

/** Openings with room for a stop; rods and fillets that may just fit, drills as wide as the hole. */
export const openings: fc.Arbitrary<Opening> = between(4, 30).chain(foundMm =>
  fc.record<Opening>({
    foundDiameterMm: loose(foundMm, foundMm, 0.05 * foundMm),
    foundDepthMm: loose(60, 90, 1),
    rodMm: fc.oneof(fc.constant(new Given(0)), loose(0.1 * foundMm, 0.95 * foundMm, 0.02 * foundMm)),
    bottom: bottom(foundMm),
    drillMm: fc.oneof(loose(0.5 * foundMm, 1.8 * foundMm, 0.02 * foundMm), loose(foundMm, foundMm, 0.02 * foundMm)),
    pointDeg: loose(70, 150, 4),
    keepClearMm: loose(0.3, 2, 0.2),
    stopErrorMm: loose(0, 0, 0.5)
  })
)

/** The same opening with other values, each somewhere inside its bounds. */
export const inside = fc.array(between(0, 1), { minLength: 9, maxLength: 9 })
