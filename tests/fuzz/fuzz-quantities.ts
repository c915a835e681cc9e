import { KIND_NAMES, KINDS, type Kind } from '../../src/quantity/kinds.ts'
import { parseQuantity, parseSpan } from '../../src/quantity/parse-quantity.ts'
import { type Fuzzed, flawIn, fuzzed } from './fuzzed.ts'
import { mutatedText } from './mutated-text.ts'
import { drawsOf } from './random.ts'

const FORMS: readonly ((text: string) => string)[] = [
  text => text,
  text => `${text} ± 5 %`,
  text => `${text} +5 % -10 %`,
  text => `${text} ± ${text}`,
  text => text.replace(/^(-?[\d.]+)/, '$1..9$1'),
  text => text.replace(/^(-?[\d.]+)/, '$1 ± 0.1'),
  text => `1-1/4 ${text.replace(/^-?[\d.]+ */, '')}`,
  text => text.replace(/^(-?[\d.]+) */, '$1')
]

interface Asked {
  readonly kind: Kind
  readonly text: string
}

/** The quantity of one number: the same for the same seed. */
function mutatedQuantity(seed: number): Asked {
  const draw = drawsOf(seed)
  const kind = draw.oneOf(KIND_NAMES)
  // A unit of any kind, asked for as this one.
  const { example } = KINDS[draw.below(4) === 0 ? draw.oneOf(KIND_NAMES) : kind]
  return { kind, text: mutatedText(draw.oneOf(FORMS)(example), draw) }
}

export function fuzzQuantities(count: number, seed: number, alive: (done: number) => void = () => {}): Fuzzed {
  return fuzzed({ count, seed, alive, made: one => JSON.stringify(mutatedQuantity(one)), tried: triedQuantity })
}

function triedQuantity(asked: string): { readonly outcome: string; readonly flaw: string | null } {
  const { kind, text } = JSON.parse(asked) as Asked
  const [quantity, span] = [parseQuantity(kind, text), parseSpan(kind, text)]
  const flaw = flawIn(quantity) ?? flawIn(span)
  if (!quantity.ok) return { outcome: 'refused', flaw: flaw ?? (quantity.fault.accepted === '' ? 'a refusal that says nothing' : null) }
  const { value, low, high } = quantity.value
  return { outcome: 'read', flaw: flaw ?? (low <= value && value <= high ? null : 'bounds that do not hold the value') }
}
