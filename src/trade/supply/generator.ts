import { formula } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { SOURCES } from '../../formula/source.ts'

/** One point of the output curve, measured or from the maker. No curve is published for flywheel generators: none is supplied here. */
export interface OutputPointGiven {
  readonly speedRpm: Given
  readonly outputA: Given
}

export const outputA = formula('outputA', {
  says: 'output between two points of the curve, a straight line',
  symbol: 'G',
  equation: 'G1+(G2-G1)·(n-n1)/(n2-n1)',
  inputs: {
    speedRpm: ['n', 0, 30_000],
    lowerRpm: ['n1', 0, 30_000],
    lowerA: ['G1', 0, 5000],
    upperRpm: ['n2', 0, 30_000],
    upperA: ['G2', 0, 5000]
  },
  source: SOURCES.practice,
  of: ({ speedRpm, lowerRpm, lowerA, upperRpm, upperA }) => lowerA + ((upperA - lowerA) * (speedRpm - lowerRpm)) / (upperRpm - lowerRpm)
})

/** Output at a speed. Nothing is carried on past the ends of the curve. */
export function outputAtA(curve: readonly Plain<OutputPointGiven>[], speedRpm: number): number {
  const points = [...curve].sort((a, b) => a.speedRpm - b.speedRpm)
  const speeds = points.map(point => point.speedRpm)
  const [least, greatest] = [Math.min(...speeds), Math.max(...speeds)]
  if (!(least < greatest))
    throw new NoAnswer(
      'the output over the speed needs two points at least',
      'give the output at two speeds, the lowest used and the highest'
    )
  if (!(speedRpm >= least && speedRpm <= greatest)) throw new OutsideRange('outputA', 'speedRpm', speedRpm, least, greatest)
  const upper = points.findIndex((point, i) => i > 0 && point.speedRpm >= speedRpm && point.speedRpm > points[i - 1]!.speedRpm)
  const [a, b] = [points[upper - 1]!, points[upper]!]
  return outputA({ speedRpm, lowerRpm: a.speedRpm, lowerA: a.outputA, upperRpm: b.speedRpm, upperA: b.outputA })
}

export type GeneratorKind = 'permanent magnet' | 'regulated field'

/** What becomes of output that nothing uses. */
export const SURPLUS: Readonly<Record<GeneratorKind, string>> = {
  'permanent magnet': 'the speed sets the output; the regulator turns what nobody uses into heat, in itself and in the stator',
  'regulated field': 'the regulator takes back the field: what nobody uses is not made'
}
