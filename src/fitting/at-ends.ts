import { Given } from '../formula/given.ts'
import type { CircuitFit, RunPart } from './circuit.ts'

type End = 'low' | 'value' | 'high'

/** Where in their bounds the sources stand, that of the bus first, and all that resists on the way to the loads. */
interface Ends {
  readonly sources: readonly End[]
  readonly resists: End
}

/** A circuit that feeds its loads from one corner of its bounds. What the loads take stays as it is. */
export function atEnds(fit: CircuitFit, { sources: [busEnd, ...otherEnds], resists }: Ends): CircuitFit {
  const resisting = (one: Given) => new Given(one[resists])
  return {
    ...fit,
    busV: new Given(fit.busV[busEnd!]),
    insideOhm: resisting(fit.insideOhm),
    others: fit.others.map((one, i) => ({
      ...one,
      sourceV: new Given(one.sourceV[otherEnds[i]!]),
      insideOhm: resisting(one.insideOhm)
    })),
    runs: fit.runs.map(run => ({ ...run, parts: run.parts.map(part => partAt(part, resisting)) }))
  }
}

function partAt(part: RunPart, resisting: (one: Given) => Given): RunPart {
  if (part.of === 'joint') return { ...part, jointOhm: resisting(part.jointOhm) }
  const { lengthM, beginsM, conductorC, lies } = part
  return {
    ...part,
    lengthM: resisting(lengthM),
    beginsM: beginsM === null ? null : resisting(beginsM),
    conductorC: resisting(conductorC),
    lies: lies === null ? null : { ...lies, ambientC: resisting(lies.ambientC) }
  }
}

/** Every source at its high end with the least resistance, and the other way round; of several, each at one end with all others at the other as well. */
export function cornersOf({ busV, others }: CircuitFit): readonly Ends[] {
  const volts = [busV, ...others.map(({ sourceV }) => sourceV)]
  const all = (end: End) => volts.map(() => end)
  const apart = others.length === 0 ? [] : volts.flatMap((_, i) => [all('low').with(i, 'high'), all('high').with(i, 'low')])
  const corners: readonly Ends[] = [
    { sources: all('high'), resists: 'low' },
    { sources: all('low'), resists: 'high' },
    ...apart.map(sources => ({ sources, resists: 'low' as const }))
  ]
  const keyOf = ({ sources, resists }: Ends) => [resists, ...sources.map((end, i) => volts[i]![end])].join(' ')
  return [...new Map(corners.map(corner => [keyOf(corner), corner])).values()]
}
