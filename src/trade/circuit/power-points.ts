import { Matrix, solve } from 'ml-matrix'
import { NoAnswer } from '../../formula/no-answer.ts'
import { quoted } from '../../quantity/quoted.ts'
import type { FactoredNetwork } from './factored-network.ts'
import type { PartOf } from './part.ts'
import { threeDigits } from './three-digits.ts'

/** What the rest of the network is to its loads of constant power: their voltages without them, and how those fall with each ampere. */
interface Ports {
  readonly openV: readonly number[]
  /** `fallOhm[i][j]`: by how much the voltage of load i falls for each ampere that load j takes. */
  readonly fallOhm: readonly (readonly number[])[]
  readonly loadW: readonly number[]
}

/** Newton's method stops where a further step is smaller than this share of the open voltage. */
const NEAR = 1e-12
const ROUNDS = 100
const HALVINGS = 60

/**
 * Currents at which all loads of constant power stand at once: the upper, stable point, found from open circuit down.
 * `base` holds each of them as a load of fixed current of 0 A.
 */
export function powerPoints(base: FactoredNetwork, loads: readonly PartOf<'power'>[]): readonly number[] {
  if (loads.length === 0) return []
  const ports = portsOf(base, loads)
  const volts = pointsOf(ports, 1)
  if (volts === undefined) throw noPoint(loads, ports)
  return loads.map(({ powerW }, i) => (powerW === 0 ? 0 : powerW / volts[i]!))
}

function portsOf(base: FactoredNetwork, loads: readonly PartOf<'power'>[]): Ports {
  const responses = loads.map(load => base.response(load))
  return {
    openV: loads.map(load => base.dropV(base.unknowns, load)),
    fallOhm: loads.map(load => responses.map(response => -base.dropV(response, load))),
    loadW: loads.map(({ powerW }) => powerW)
  }
}

/** Voltages of the loads with each at a share of its power; undefined where there is no such point. */
function pointsOf({ openV, fallOhm, loadW }: Ports, share: number): readonly number[] | undefined {
  let volts = [...openV]
  for (let round = 0; round < ROUNDS; round++) {
    if (volts.some((v, i) => loadW[i]! > 0 && !(v > 0))) return undefined
    const amps = loadW.map((w, i) => (w === 0 ? 0 : (share * w) / volts[i]!))
    const miss = volts.map((v, i) => v - openV[i]! + sum(amps.map((a, j) => fallOhm[i]![j]! * a)))
    const slope = volts.map((_, i) => volts.map((v, j) => (i === j ? 1 : 0) - (amps[j] === 0 ? 0 : (fallOhm[i]![j]! * amps[j]!) / v)))
    const step = solve(new Matrix(slope), Matrix.columnVector(miss)).to1DArray()
    volts = volts.map((v, i) => v - step[i]!)
    if (step.every((s, i) => Math.abs(s) <= NEAR * Math.abs(openV[i]!))) return volts
  }
  return undefined
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((a, b) => a + b, 0)
}

/** In words, with the largest share of their power at which all of them together have a point. */
function noPoint(loads: readonly PartOf<'power'>[], ports: Ports): NoAnswer {
  const dead = loads.find((_, i) => ports.loadW[i]! > 0 && !(ports.openV[i]! > 0))
  if (dead !== undefined)
    return new NoAnswer(`no operating point: ${quoted(dead.id)} has no voltage of its own polarity to work at`, 'feed it, plus at its plus')
  const share = greatestShare(ports)
  const names = loads.map(({ id, powerW }) => `${quoted(id)} takes ${threeDigits(powerW)} W`).join(' and ')
  const most = loads.map(({ id, powerW }) => `${quoted(id)} ${threeDigits(share * powerW, 'down')} W`).join(' with ')
  const [only] = loads
  const less = loads.length > 1 ? `${threeDigits(100 * share, 'down')} % of their powers` : `${threeDigits(share * only!.powerW, 'down')} W`
  return new NoAnswer(
    `no operating point: ${names} whatever the voltage; the most that can arrive is ${most}`,
    `take no more than ${less}, or use thicker or shorter wire, better joints, a higher bus`
  )
}

/** By halving: below it there is a point, above it there is none. */
function greatestShare(ports: Ports): number {
  let [low, high] = [0, 1]
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2
    if (pointsOf(ports, middle) === undefined) high = middle
    else low = middle
  }
  return low
}
