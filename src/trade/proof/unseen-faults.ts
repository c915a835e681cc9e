import { type Fault, type FaultSizes, HEALTHY } from './fault.ts'
import { gaussianOf, type Predictor } from './predictor.ts'

/** Nearer to a circuit in order than this, in standard deviations squared, a fault hardly shows. */
const SHOWS = 6

/** Faults that these readings would hardly show, were they of a middling size. */
export function unseenFaults(predictor: Predictor, faults: readonly Fault[]): readonly Fault[] {
  const whole = { values: predictor.valuesOf(HEALTHY, 0), slopes: predictor.slopesOf(HEALTHY, 0) }
  const order = gaussianOf(predictor, whole)
  const settled = whole.values.map((value, i) => order.mean[i]! - value)
  const distance = (fault: Fault, size: number) => order.distance(predictor.valuesOf(fault, size).map((value, i) => value + settled[i]!))
  return faults.filter(
    fault =>
      fault.kind !== 'healthy' && fault.kind !== 'misread' && Math.max(...sizesOf(fault.sizes).map(size => distance(fault, size))) < SHOWS
  )
}

/** The middle of a range; any of a list. */
function sizesOf(sizes: FaultSizes): readonly number[] {
  switch (sizes.by) {
    case 'none':
      return [0]
    case 'list':
      return sizes.of.map(({ size }) => size)
    case 'range':
      return [Math.sqrt(sizes.low * sizes.high)]
  }
}
