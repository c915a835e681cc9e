import { NoAnswer } from '../../formula/no-answer.ts'
import { quoted } from '../../quantity/quoted.ts'
import type { PlainElement, PlainNetwork } from './network.ts'
import { threeDigits } from './three-digits.ts'

/** A way round without any resistance. */
export interface IdealLoop {
  readonly ids: readonly string[]
  /** What the sources in it leave over; anything but 0 would drive a current without end. */
  readonly leftOverV: number
}

/** One step along an element: from which node to which, and how much the voltage rises. */
interface Step {
  readonly id: string
  readonly to: string
  readonly riseV: number
}

/** A sum of voltages smaller than this share of them is rounding. */
const ROUNDING = 1e-9

/** Every element that closes a way round through sources and joints without resistance, with that way. */
export function idealLoops({ elements }: PlainNetwork): readonly IdealLoop[] {
  const forest = new Map<string, Step[]>()
  const loops: IdealLoop[] = []
  for (const element of elements) {
    const riseV = idealRiseV(element)
    if (riseV === undefined) continue
    const { id, from, to } = element
    const path = pathBetween(to, from, forest)
    if (path === undefined) join(forest, { id, from, to, riseV })
    else loops.push(closed([{ id, to, riseV }, ...path]))
  }
  return loops
}

/** In words; nothing where every way round has some resistance. */
export function refuseIdealLoops(network: PlainNetwork): void {
  const loop = idealLoops(network)[0]
  if (loop === undefined) return
  const names = loop.ids.map(id => quoted(id)).join(', ')
  if (loop.leftOverV === 0) {
    throw new NoAnswer(
      `the way round through ${names} has no resistance: how the current divides in it is not determined`,
      'give one of them the resistance it has, or leave one out'
    )
  }
  throw new NoAnswer(
    `the way round through ${names} has no resistance, and its sources leave ${threeDigits(loop.leftOverV)} V over`,
    'give a source its internal resistance, or correct its voltage'
  )
}

export function isIdeal(element: PlainElement): boolean {
  return idealRiseV(element) !== undefined
}

/** How much the voltage rises from `from` to `to` whatever the current; nothing where there is resistance. */
function idealRiseV(element: PlainElement): number | undefined {
  if (element.kind === 'resistor' && element.resistanceOhm === 0) return 0
  if (element.kind === 'source' && element.insideOhm === 0) return element.sourceV
  return undefined
}

function join(forest: Map<string, Step[]>, { id, from, to, riseV }: Step & { readonly from: string }): void {
  forest.set(from, [...(forest.get(from) ?? []), { id, to, riseV }])
  forest.set(to, [...(forest.get(to) ?? []), { id, to: from, riseV: -riseV }])
}

function pathBetween(start: string, end: string, forest: ReadonlyMap<string, readonly Step[]>): readonly Step[] | undefined {
  const paths = new Map<string, readonly Step[]>([[start, []]])
  for (const [node, path] of paths) {
    if (node === end) return path
    for (const step of forest.get(node) ?? []) if (!paths.has(step.to)) paths.set(step.to, [...path, step])
  }
  return undefined
}

function closed(steps: readonly Step[]): IdealLoop {
  const sum = steps.reduce((total, { riseV }) => total + riseV, 0)
  const size = steps.reduce((total, { riseV }) => total + Math.abs(riseV), 0)
  return { ids: steps.map(({ id }) => id), leftOverV: Math.abs(sum) <= ROUNDING * size ? 0 : Math.abs(sum) }
}
