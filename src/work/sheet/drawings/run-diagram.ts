import { loadName, markedItem } from '../../../job/circuit-names.ts'
import { showNumber } from '../../../quantity/show.ts'
import { ACROSS, type Drawing, type Shape } from '../../../report/drawing/drawing.ts'
import { box, dot, line, words } from '../../../report/drawing/paper.ts'
import type { Figure } from '../../../report/plan/plan.ts'
import { BUS } from '../../job/circuit-wiring.ts'
import { openRuns } from '../../job/guards-in.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { onFitOf } from '../../job/on-fit-of.ts'
import type { Points } from '../../job/points.ts'
import { ofBounded, ofResult } from '../../plan/figure.ts'
import { type FeedPath, feedPath, type Stretch } from './feed-path.ts'

type Circuit = NonNullable<JudgedJob['job']['circuit']>
type Load = Circuit['loads'][number]

/** The line stands here: what joins two points is told on its left, the points on its right. */
const X = 150
const STEP = 44
const TOP = 26

/** One load with the way of its current, from the bus down to the 0 V node, the voltage at each point. */
export function runDiagram(load: Load, circuit: Circuit, judged: JudgedJob): Drawing | undefined {
  const { points } = judged
  const path = feedPath(circuit, openRuns(onFitOf(judged.job, circuit)), BUS, load)
  if (points === null || path === null) return undefined
  const stops = [...path.feed.map(({ from }) => from), load.from, load.to, ...path.back.map(({ to }) => to)]
  const shapes = [
    ...stops.map((name, i) => point(name, i, points)),
    ...path.feed.map((stretch, i) => joined(stretch, i, circuit, points)),
    loadShapes(load, path.feed.length, takenBy(load, circuit, judged)),
    ...path.back.map((stretch, i) => joined(stretch, path.feed.length + 1 + i, circuit, points)),
    earth(stops.length - 1)
  ]
  return {
    id: `run-${circuit.loads.indexOf(load) + 1}`,
    title: `Circuit of ${loadName(load)}, with voltages against ${circuit.source.ground}`,
    says: saysOf(load, { path, stops, points }),
    scale: null,
    across: ACROSS,
    down: TOP + (stops.length - 1) * STEP + 34,
    shapes: [...shapes.flat().filter(isLine), ...shapes.flat().filter(shape => !isLine(shape))]
  }
}

/** Lines lie under dots and boxes. */
function isLine({ shape, look }: Shape & { readonly look?: string }): boolean {
  return shape === 'path' && look === 'wire'
}

function heightOf(i: number): number {
  return TOP + i * STEP
}

function point(name: string, i: number, { points }: Points): readonly Shape[] {
  const volts = points.find(one => one.name === name)
  const text = volts === undefined ? '' : ofBounded('pointV', name, volts.pointV).text
  return [
    dot('wire', [X, heightOf(i)], 4),
    words([X + 14, heightOf(i) - 1], text, { bold: true, room: 180 }),
    words([X + 14, heightOf(i) + 12], name, { room: 180 })
  ]
}

/** A run: its wire, what it passes, its joint, a line each; its current. */
function joined({ run, against }: Stretch, i: number, { runs }: Circuit, { runs: flows }: Points): readonly Shape[] {
  const { wire, bond, through } = runs[run]!
  const { value } = flows[run]!.runA
  const amps = `${showNumber(against ? -value : value, 'current')} A`
  const middle = heightOf(i) + STEP / 2
  const told = [
    ...(wire === null ? [] : [`${wire.size.name}, ${showNumber(wire.length.value, 'run')} m`]),
    ...(through.length === 0 ? [] : [through.map(item => markedItem(item).what).join(', ')]),
    ...(bond === null ? [] : [`joint ${showNumber(bond.value * 1000, 'plain')} mohm`])
  ]
  const first = middle - (told.length - 1) * 6.5 + 4
  return [
    line('wire', [X, heightOf(i)], [X, heightOf(i + 1)]),
    ...told.map((text, k) => words([X - 14, first + k * 13], text, { anchor: 'end', room: X - 14 })),
    ...(through.length === 0 ? [] : [box('load', [X - 4, middle - 8], [X + 4, middle + 8])]),
    words([X + 60, middle + 4], `↓ ${amps}`, { room: 120 })
  ]
}

/** Amps and watts with everything on: of a circuit in which something is drawn open no result tells that. */
function takenBy(load: Load, { runs }: Circuit, { result, points }: JudgedJob): readonly (Figure | null)[] {
  const name = loadName(load)
  const on = points?.loads.find(one => one.name === name)
  if (on !== undefined && runs.some(({ through }) => through.some(({ state }) => state === 'open')))
    return [ofBounded('loadA', name, on.loadA), ofBounded('loadW', name, on.loadW)]
  return [ofResult(result(`circuit.${name}:drop.current`)), ofResult(result(`circuit.${name}:drop.power`))]
}

function loadShapes(load: Load, i: number, [amps, watts]: ReturnType<typeof takenBy>): readonly Shape[] {
  const middle = heightOf(i) + STEP / 2
  const name = loadName(load)
  return [
    line('wire', [X, heightOf(i)], [X, heightOf(i + 1)]),
    box('load', [X - 7, middle - 12], [X + 7, middle + 12]),
    words([X - 14, middle + 4], name, { anchor: 'end', bold: true, room: X - 14 }),
    words([X + 60, middle + 4], `↓ ${amps?.text ?? ''}, ${watts?.text ?? ''}`, { bold: true, room: 130 })
  ]
}

/** The sign of the 0 V node. */
function earth(i: number): readonly Shape[] {
  const y = heightOf(i)
  return [
    line('wire', [X, y], [X, y + 14]),
    ...[12, 8, 4].map((half, k) => line('outline', [X - half, y + 14 + k * 5], [X + half, y + 14 + k * 5]))
  ]
}

interface Way {
  readonly path: FeedPath
  readonly stops: readonly string[]
  readonly points: Points
}

function saysOf(load: Load, { stops, points }: Way): string {
  const at = stops.map(name => {
    const volts = points.points.find(one => one.name === name)
    return volts === undefined ? name : `${name} ${ofBounded('pointV', name, volts.pointV).text}`
  })
  return `The way of the current through ${loadName(load)}, from the bus down to the 0 V node: ${at.join(', ')}`
}
