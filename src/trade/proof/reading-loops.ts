import { isLive, type Probe } from './probe.ts'

/** A way round through readings of volts: with their signs they should sum to nought. */
export interface ReadingLoop {
  /** Places in the list of readings, and whether each is passed from red to black. */
  readonly steps: readonly { readonly index: number; readonly sign: 1 | -1 }[]
  readonly sumV: number
  /** What the meter may be off in all of them together. */
  readonly allowedV: number
}

export interface TakenVolts extends Probe {
  readonly value: number
  readonly errorV: number
}

interface Step {
  readonly to: string
  readonly index: number
  readonly sign: 1 | -1
}

/** Each reading that joins two points which the readings before it joined already closes one way round, the shortest there is. */
export function readingLoops(readings: readonly TakenVolts[]): readonly ReadingLoop[] {
  const joined = new Map<string, readonly Step[]>()
  const loops: ReadingLoop[] = []
  for (const [index, reading] of readings.entries()) {
    if (reading.takes !== 'volts' || !isLive(reading)) continue
    const { red, black } = reading
    const path = shortest(joined, red, black)
    if (path !== undefined) loops.push(loopOf(readings, [{ to: red, index, sign: -1 }, ...path]))
    joined.set(red, [...(joined.get(red) ?? []), { to: black, index, sign: 1 }])
    joined.set(black, [...(joined.get(black) ?? []), { to: red, index, sign: -1 }])
  }
  return loops
}

function loopOf(readings: readonly TakenVolts[], steps: readonly Step[]): ReadingLoop {
  return {
    steps: steps.map(({ index, sign }) => ({ index, sign })),
    sumV: steps.reduce((sum, { index, sign }) => sum + sign * readings[index]!.value, 0),
    allowedV: steps.reduce((sum, { index }) => sum + readings[index]!.errorV, 0)
  }
}

function shortest(joined: ReadonlyMap<string, readonly Step[]>, start: string, end: string): readonly Step[] | undefined {
  const paths = new Map<string, readonly Step[]>([[start, []]])
  for (const [node, path] of paths) {
    if (node === end) return path
    for (const step of joined.get(node) ?? []) if (!paths.has(step.to)) paths.set(step.to, [...path, step])
  }
  return undefined
}
