import { type Closing, closings, keyOf, type Opened, without } from './closings.ts'
import { alone, fedLoads, needed } from './fed-loads.ts'
import type { Wiring } from './guarding.ts'
import { loadWay, type SourceLine } from './load-way.ts'
import { type Region, regionsOf } from './regions.ts'
import { spread, type Tie } from './spread.ts'

/** A circuit as lines, and which runs can be opened and closed. */
export interface Switching extends Pick<Wiring, 'runs' | 'loads'> {
  readonly sources: readonly SourceLine[]
  readonly switchable: readonly string[]
  /** As it is drawn. */
  readonly open: readonly string[]
}

/**
 * How the switches may stand before one of them is opened: as they are drawn, and with what is drawn open closed, together and each
 * alone, also with what must be open for that, as where two in series are put in parallel. A position that puts sources together
 * which are not together as drawn is none.
 */
export function startingPositions(switching: Switching): readonly Opened[] {
  const drawn = new Set(switching.open)
  if (drawn.size === 0) return [drawn]
  const alone = switching.open.map(id => without(drawn, id)).filter(soundIn(switching))
  return apart([drawn, ...allClosed(switching), ...insteadOf(switching), ...alone])
}

/** Of those the drawn one, and each in which nothing is open that is closed in another with all else as it is. */
export function closedMost(switching: Switching): readonly Opened[] {
  const [drawn, ...others] = startingPositions(switching)
  const isMost = (one: Opened) => !others.some(other => other.size < one.size && [...other].every(id => one.has(id)))
  return [drawn!, ...others.filter(isMost)]
}

/**
 * The positions besides the drawn one in which something may carry more: where one may start from, each without a run beside which
 * another leads the same way, of such runs each alone, and what a load that is off as drawn needs and no more.
 */
export function switchPositions(switching: Switching, starts: readonly Opened[] = startingPositions(switching)): readonly Opened[] {
  const beside = switching.switchable.filter(id => leadsBeside(switching, id))
  const alones = beside.map(id => alone(switching, beside, id)).filter(soundIn(switching))
  const off = starts.flatMap(start => beside.map(id => new Set([...start, id])))
  const drawn = keyOf(new Set(switching.open))
  return apart([...starts, ...needed(switching, mostFed(switching, allClosed(switching))), ...alones, ...off]).filter(
    position => keyOf(position) !== drawn
  )
}

function apart(positions: readonly Opened[]): readonly Opened[] {
  return [...new Map(positions.map(position => [keyOf(position), position])).values()]
}

/**
 * Everything closed that can be at once: no two sources put together that are not together as drawn, and no load that is fed cut off
 * or turned round by what is closed after it. Of several such positions that in which most loads are fed, and of those where least is open.
 */
export function mostClosed(switching: Switching): Opened {
  const [isSound, leavesFed] = [soundIn(switching), leavesFedIn(switching)]
  return mostFed(
    switching,
    closingsOf(switching, (position, before) => isSound(position) && leavesFed(position, before))
  )
}

function mostFed(switching: Switching, [first, ...others]: readonly Opened[]): Opened {
  if (others.length === 0) return first!
  const fed = new Map([first!, ...others].map(position => [position, fedLoads(switching, position).size]))
  return others.reduce((most, one) => (isMore(one, most) ? one : most), first!)

  function isMore(one: Opened, most: Opened): boolean {
    const more = fed.get(one)! - fed.get(most)!
    return more > 0 || (more === 0 && one.size < most.size)
  }
}

/** Where not all that is drawn open can be closed at once, each way to close as much as can be. */
function allClosed(switching: Switching): readonly Opened[] {
  return closingsOf(switching, soundIn(switching))
}

function closingsOf({ open }: Switching, isSound: Closing['isSound']): readonly Opened[] {
  return closings({ start: new Set(open), order: open, isSound })
}

/** What is drawn open closed before anything else: what would short a source then is open. Nothing where that turns a load round. */
function insteadOf(switching: Switching): readonly Opened[] {
  const { open, switchable } = switching
  const order = [...open, ...switchable.filter(id => !open.includes(id))]
  const drawn = turnedIn(switching, new Set(open))
  return closings({ start: new Set(order), order, isSound: soundIn(switching) }).filter(
    position => ![...turnedIn(switching, position)].some(([load, turned]) => drawn.has(load) && drawn.get(load) !== turned)
  )
}

/** Whether a position shorts no source and puts none together that are not so as drawn. */
function soundIn(switching: Switching): (position: Opened) => boolean {
  const most = roundsOf(switching, new Set(switching.open))
  return position => roundsOf(switching, position) <= most
}

/** Whether each load that is fed before one more is closed is fed after it too, the same way round. */
function leavesFedIn(switching: Switching): (position: Opened, before: Opened) => boolean {
  const known = new Map<Opened, ReadonlyMap<string, boolean>>()
  const turned = (position: Opened) => known.get(position) ?? turnedIn(switching, position)
  return (position, before) => {
    const [was, is] = [turned(before), turned(position)]
    known.set(before, was).set(position, is)
    return [...was].every(([load, way]) => is.get(load) === way)
  }
}

/** Whether the current of each load that is fed goes from its `to` to its `from`. */
function turnedIn({ runs, loads, sources }: Switching, position: Opened): ReadonlyMap<string, boolean> {
  const closed = runs.filter(({ id }) => !position.has(id))
  const ways = loads.map(({ name }) => ({ name, way: loadWay({ runs: closed, loads }, sources, name) }))
  return new Map(ways.flatMap(({ name, way }) => (way === null ? [] : [[name, way.passes.some(one => one.load === name && one.turned)]])))
}

/** Rounds through sources and runs alone: a source shorted, or beside another. */
function roundsOf({ runs, sources }: Switching, position: Opened): number {
  const closed = runs.filter(({ id }) => !position.has(id))
  const { region } = regionsOf(closed)
  const joined = regionsOf([])
  return sources.filter(({ from, to }) => !joined.join(region(from), region(to))).length
}

/** Whether current finds another way round a run: along runs, through another source, or through loads between the rails. */
function leadsBeside({ runs, loads, sources }: Switching, id: string): boolean {
  const run = runs.find(one => one.id === id)
  if (run === undefined) return false
  const rest = runs.filter(one => one.id !== id)
  const { region } = regionsOf([...rest, ...sources])
  return region(run.from) === region(run.to) || leadsThroughLoads({ run, lines: [...rest, ...loads], ...railOf(rest, sources) })
}

interface Rails {
  readonly region: Region
  readonly isRail: (point: string) => boolean
}

function railOf(rest: Wiring['runs'], sources: readonly SourceLine[]): Rails {
  const { region } = regionsOf(rest)
  const rails = new Set(sources.flatMap(({ from, to }) => [region(from), region(to)]))
  return { region, isRail: point => rails.has(region(point)) }
}

interface Way extends Rails {
  readonly run: Wiring['runs'][number]
  readonly lines: readonly Tie[]
}

/** Whether loads lead from one end to the other, or to what runs join to it. */
function leadsThroughLoads({ run, lines, region, isRail }: Way): boolean {
  const [start, end] = isRail(run.from) ? [run.to, run.from] : [run.from, run.to]
  return [...spread(start, lines, isRail)].some(point => region(point) === region(end))
}
