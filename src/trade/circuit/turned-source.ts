import { type Regions, regionsOf } from './regions.ts'

interface Line {
  readonly from: string
  readonly to: string
}

interface Rails {
  readonly bus: string
  readonly ground: string
  /** What joins points without a load between. */
  readonly runs: readonly Line[]
}

/** A source whose minus is joined to the bus and whose plus to the 0 V node: in series with the one that feeds the bus, shorted. */
export function turnedSource<S extends Line>({ bus, ground, runs }: Rails, sources: readonly S[]): S | undefined {
  const { region }: Regions = regionsOf(runs)
  const [plus, minus] = [region(bus), region(ground)]
  return plus === minus ? undefined : sources.find(({ from, to }) => region(from) === plus && region(to) === minus)
}
