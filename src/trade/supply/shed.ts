import type { Plain } from '../../formula/given.ts'
import { type LoadGiven, meanA, type Priority } from './load.ts'

const ORDER: readonly Priority[] = ['comfort', 'useful']

export interface Shed {
  readonly name: string
  readonly priority: Priority
  readonly freedA: number
  /** With all that stand above it. */
  readonly freedSoFarA: number
}

/** What to switch off, first things first: the least needed, and among these the one that frees most. Essential loads are not in it. */
export function shedOrder(loads: readonly Plain<LoadGiven>[]): readonly Shed[] {
  const ranked = loads
    .filter(({ priority }) => priority !== 'essential')
    .map(({ name, priority, currentA, dutyPercent }) => ({ name, priority, freedA: meanA({ currentA, dutyPercent }) }))
    .sort((a, b) => ORDER.indexOf(a.priority) - ORDER.indexOf(b.priority) || b.freedA - a.freedA)
  let freedSoFarA = 0
  return ranked.map(load => {
    freedSoFarA += load.freedA
    return { ...load, freedSoFarA }
  })
}

/** The first of the order that together free what is short; all of them where even that is not enough. */
export function shedFor(loads: readonly Plain<LoadGiven>[], shortA: number): readonly Shed[] {
  const order = shedOrder(loads)
  const last = order.findIndex(load => frees(load, shortA))
  return shortA <= 0 ? [] : order.slice(0, last < 0 ? order.length : last + 1)
}

/** Within rounding: what takes all that is short frees all of it. */
function frees({ freedSoFarA }: Shed, shortA: number): boolean {
  return freedSoFarA >= shortA * (1 - ROUNDING)
}

const ROUNDING = 1e-9

/** What frees enough at the worst end, in words; empty where nothing may be switched off. What is short there is short of what the loads take there. */
export function shedText(given: readonly LoadGiven[], shortA: number): string {
  const loads = given.map(({ name, priority, currentA, dutyPercent }) => ({
    name,
    priority,
    currentA: currentA.high,
    dutyPercent: dutyPercent.high
  }))
  const chosen = shedFor(loads, shortA)
  const last = chosen.at(-1)
  const names = chosen.map(({ name, freedA: each }) => `${name} (${Number(each.toPrecision(3))} A)`).join(', ')
  return last === undefined || frees(last, shortA) ? names : `${names}; that alone is not enough`
}
