import type { Ampacity, NoFigure } from './ampacity.ts'
import type { SmallestAllowed } from './ampacity-smallest-wire.ts'
import { threeDigits } from './three-digits.ts'

/** One size of wire with all that it is judged by; null where something was not asked for or could not be worked out. */
export interface WireCandidate {
  readonly name: string
  readonly current: Ampacity | NoFigure
  readonly currentA: number
  /** Drop and its limit, both as the limit is put: in volts or as a share of the bus. */
  readonly dropped: number
  readonly limit: { readonly value: number; readonly unit: '%' | 'V' } | null
  readonly smallest: SmallestAllowed
  /** Room to the short-time limit when its protector opens. */
  readonly heatingMarginK: number | null
  /** What its protector does at a short of the far end. */
  readonly short: 'opens' | 'may stay shut' | 'not known'
}

/** What speaks against a size, in words; empty where nothing does. Call it with each number at its worst end. */
export function wireObjections(candidate: WireCandidate): readonly string[] {
  return [tooHot, tooMuchDrop, tooThin, burnsFirst, staysShut].flatMap(test => test(candidate) ?? [])
}

/** The first of the sizes, smallest first, that nothing speaks against; undefined where every one is turned down. */
export function smallestWire<W extends WireCandidate>(smallestFirst: readonly W[]): W | undefined {
  return smallestFirst.find(candidate => wireObjections(candidate).length === 0)
}

type Objection = string | undefined

function tooHot({ current, currentA }: WireCandidate): Objection {
  if (current.kind === 'no figure') return current.says
  if (currentA <= current.ampacityA) return undefined
  return `carries ${threeDigits(current.ampacityA)} A for good, ${threeDigits(currentA)} A wanted`
}

function tooMuchDrop({ dropped, limit }: WireCandidate): Objection {
  if (limit === null || dropped <= limit.value) return undefined
  return `drops ${threeDigits(dropped)} ${limit.unit} warmed by its current, ${threeDigits(limit.value)} ${limit.unit} allowed`
}

function tooThin({ smallest }: WireCandidate): Objection {
  return smallest.allowed === 'yes' ? undefined : smallest.says
}

function burnsFirst({ heatingMarginK }: WireCandidate): Objection {
  if (heatingMarginK === null || heatingMarginK >= 0) return undefined
  return `gets ${threeDigits(-heatingMarginK)} K too hot in a short circuit before its protector opens`
}

function staysShut({ short }: WireCandidate): Objection {
  return short === 'may stay shut' ? 'a short at its far end may never open the protector' : undefined
}
