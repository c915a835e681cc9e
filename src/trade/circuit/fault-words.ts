import { showTime } from '../../quantity/show-time.ts'
import type { Fault } from './fault.ts'
import type { FaultEffects, FedBackwards, Opening, Overload } from './fault-effects.ts'
import type { StatedFault } from './switched-walk.ts'
import { threeDigits } from './three-digits.ts'

export function faultName(fault: Fault): string {
  switch (fault.kind) {
    case 'shorted':
      return `${fault.point} shorted to ground`
    case 'opened':
      return `${fault.id} open`
    case 'threads':
      return `${fault.id}, the way back through threads, open`
    case 'cranking':
      return `${fault.id} off while cranking`
  }
}

/** A fault with how the circuit is switched, where that is not as it is drawn. */
export function statedName({ fault, state }: StatedFault): string {
  return state === undefined ? faultName(fault) : `${faultName(fault)}, with ${state}`
}

const MOST_STATES = 3

/** How many were walked, and how the circuit was switched besides. */
export function walkedText(walk: readonly StatedFault[]): string {
  const drawn = walk.filter(({ state }) => state === undefined).length
  const states = [...new Set(walk.flatMap(({ state }) => state ?? []))]
  const count = `${drawn} single ${drawn === 1 ? 'fault' : 'faults'} walked at the nominal`
  if (states.length === 0) return count
  return states.length > MOST_STATES
    ? `${count}, also in ${states.length} states of its switches`
    : `${count}, also with ${states.join(', with ')}`
}

/** What a fault brings about, the worst first; in words. */
export function faultText({ overloads, backwards, opens, doubtful, lost }: FaultEffects): string {
  const parts = [
    ...overloads.toSorted((a, b) => b.clearedS - a.clearedS).map(overloadText),
    ...backwards.map(backwardsText),
    ...opens.map(opening => `${opening.id} opens ${bandText(opening)}`),
    ...doubtful.map(({ id, currentA }) => `${id} may open or not at ${threeDigits(currentA)} A`),
    ...(lost.length === 0 ? [] : [`without current: ${lost.join(', ')}`])
  ]
  return parts.length === 0 ? 'nothing worth a word' : parts.join('; ')
}

function overloadText({ id, currentA, ampacityA, clearedS }: Overload): string {
  const head = `${id} carries ${threeDigits(currentA)} A, it is good for ${threeDigits(ampacityA)} A`
  return Number.isFinite(clearedS) ? head + clearedText(clearedS) : `${head}, and nothing clears it`
}

/** What is fed as it should not be, with what stands over it. */
export function backwardsText({ id, how, dropV, clearedS }: FedBackwards): string {
  const head = `${id} is fed ${how === 'reversed' ? 'backwards' : how} with ${threeDigits(Math.abs(dropV))} V`
  return Number.isFinite(clearedS) ? head + clearedText(clearedS) : head
}

function clearedText(clearedS: number): string {
  return `, cleared within ${showTime(clearedS)}`
}

function bandText({ currentA, shortestS, longestS }: Opening): string {
  const soonest = shortestS === 0 ? '' : `no sooner than ${showTime(shortestS)} and `
  return `${soonest}within ${showTime(longestS)} at ${threeDigits(currentA)} A`
}
