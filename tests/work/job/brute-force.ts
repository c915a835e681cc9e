/** A run of a drawing: its resistance in all, and what can open it. */
export interface DrawnRun {
  readonly id: string
  readonly from: string
  readonly to: string
  readonly ohm: number
  readonly switched: boolean
  readonly open: boolean
}

export interface Drawing {
  readonly ground: string
  readonly sources: readonly { readonly from: string; readonly to: string; readonly ohm: number; readonly volts: number }[]
  readonly runs: readonly DrawnRun[]
  readonly loads: readonly { readonly name: string; readonly from: string; readonly to: string; readonly ohm: number }[]
}

type Line = { readonly from: string; readonly to: string; readonly ohm: number; readonly volts?: number }

/** Currents of one position of the switches: of runs by id, of loads by name, and of each run while one of the loads is shorted. */
export interface Position {
  readonly runsA: ReadonlyMap<string, number>
  readonly loadsA: ReadonlyMap<string, number>
  readonly shortsA: ReadonlyMap<string, ReadonlyMap<string, number>>
}

const SHORT_OHM = 0.001
const OFF_OHM = 1e6

/** Each of the 2ⁿ positions of n switches that shorts no source and puts none together that are not so as drawn. */
export function everyPosition(drawing: Drawing): readonly Position[] {
  const { runs } = drawing
  const switched = runs.filter(run => run.switched)
  const most = rounds(
    drawing,
    runs.filter(({ open }) => !open)
  )
  return Array.from({ length: 2 ** switched.length }, (_, bits) =>
    runs.filter(run => !run.switched || ((bits >> switched.indexOf(run)) & 1) === 0)
  )
    .filter(closed => rounds(drawing, closed) <= most)
    .map(closed => positionOf(drawing, closed))
}

function positionOf({ ground, sources, loads }: Drawing, closed: readonly DrawnRun[]): Position {
  const flows = flowsIn(ground, [...closed, ...loads, ...sources])
  const loadsA = new Map(loads.map(({ name }, i) => [name, flows[closed.length + i]!]))
  const fed = loads.filter(({ name }) => loadsA.get(name)! > 1e-3)
  const off = loads.map(load => ({ ...load, ohm: OFF_OHM }))
  const shorted = (load: Line) => flowsIn(ground, [...closed, { ...load, ohm: SHORT_OHM }, ...off, ...sources])
  const byRun = (all: readonly number[]) => new Map(closed.map(({ id }, i) => [id, all[i]!]))
  return { runsA: byRun(flows), loadsA, shortsA: new Map(fed.map(load => [load.name, byRun(shorted(load))])) }
}

/** Sources shorted, or put beside another. */
function rounds({ sources }: Drawing, closed: readonly Line[]): number {
  const lines = [...closed]
  return sources.filter(source => {
    const isRound = reached(source.from, lines).has(source.to)
    if (!isRound) lines.push(source)
    return isRound
  }).length
}

function reached(start: string, lines: readonly Line[]): ReadonlySet<string> {
  const points = new Set([start])
  for (const point of points)
    for (const { from, to } of lines) {
      if (from === point) points.add(to)
      if (to === point) points.add(from)
    }
  return points
}

/** Kirchhoff's current law at every point, by elimination: how much flows in each line, either way. */
function flowsIn(ground: string, lines: readonly Line[]): readonly number[] {
  const points = [...new Set(lines.flatMap(({ from, to }) => [from, to]))].filter(point => point !== ground)
  const rows = points.map(point => points.map(other => (other === point ? 1e-12 : 0)).concat(0))
  for (const { from, to, ohm, volts = 0 } of lines)
    for (const [here, there, sign] of [
      [from, to, -1],
      [to, from, 1]
    ] as const) {
      const row = rows[points.indexOf(here)]
      if (row === undefined) continue
      row[points.indexOf(here)]! += 1 / ohm
      if (there !== ground) row[points.indexOf(there)]! -= 1 / ohm
      row[points.length]! += (sign * volts) / ohm
    }
  eliminate(rows)
  const voltsAt = new Map(points.map((point, i) => [point, rows[i]![points.length]! / rows[i]![i]!]))
  return lines.map(({ from, to, ohm, volts = 0 }) => Math.abs((voltsAt.get(from) ?? 0) - (voltsAt.get(to) ?? 0) + volts) / ohm)
}

function eliminate(rows: number[][]): void {
  for (let k = 0; k < rows.length; k++) {
    const best = rows.slice(k).reduce((most, row) => (Math.abs(row[k]!) > Math.abs(most[k]!) ? row : most))
    const at = rows.indexOf(best)
    ;[rows[k], rows[at]] = [best, rows[k]!]
    for (const row of rows) {
      const share = row === best ? 0 : row[k]! / best[k]!
      if (share !== 0) for (let j = k; j < row.length; j++) row[j]! -= share * best[j]!
    }
  }
}
