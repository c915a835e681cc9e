import { Exact } from './exact.ts'

/** A ratio as two numbers: the nearest one, and the nearest to what that leaves over. */
interface Pair {
  readonly high: number
  readonly low: number
}

/** A decimal in parts that are whole and small: (lead × 10^trailing + trail) / 10^places. */
interface Decimal {
  readonly lead: number
  readonly trail: number
  readonly trailing: number
  readonly places: number
}

/** So many digits fit into a number with room to spare; what comes after them is the trail. */
const LEAD = 15
const MOST_DIGITS = 17
const MOST_PLACES = 20
/** Far more than what all the roundings below come to, as a share of the product. */
const DOUBT = 2 ** -96

/**
 * A decimal as written times a ratio, to the nearest number: what `Exact` gives, without its long whole numbers.
 * Undefined where the digits are too many, or where the nearest number cannot be told in two numbers' worth of digits.
 */
export function quickProduct(text: string, by: Exact): number | undefined {
  const decimal = lastDecimal(text)
  if (decimal === undefined) return undefined
  const { lead, trail, trailing, places } = decimal
  const share = pairOf(by, places - trailing)
  const product = lead * share.high
  const rest = restOf(lead, share.high, product) + lead * share.low + (trail === 0 ? 0 : trail * pairOf(by, places).high)
  const doubt = DOUBT * Math.abs(product)
  const nearest = product + (rest - doubt)
  return nearest === product + (rest + doubt) ? nearest : undefined
}

let last: { readonly text: string; readonly decimal: Decimal | undefined } = { text: '', decimal: undefined }

/** One number is told in several units, one after the other. */
function lastDecimal(text: string): Decimal | undefined {
  if (last.text !== text) last = { text, decimal: decimalOf(text) }
  return last.decimal
}

const [NOUGHT, NINE, POINT] = [48, 57, 46]

function decimalOf(text: string): Decimal | undefined {
  let [lead, trail, digits, places] = [0, 0, 0, -1]
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i)
    if (code === POINT && places < 0) places = 0
    else if (code < NOUGHT || code > NINE) return undefined
    else {
      if (places >= 0) places++
      if (digits > 0 || code !== NOUGHT) digits++
      if (digits <= LEAD) lead = lead * 10 + code - NOUGHT
      else trail = trail * 10 + code - NOUGHT
    }
  }
  if (digits > MOST_DIGITS || places > MOST_PLACES) return undefined
  return { lead, trail, trailing: Math.max(0, digits - LEAD), places: Math.max(0, places) }
}

/** What rounding took from a product, to the last bit (Dekker 1971, memory): each factor is cut into halves whose products are exact. */
function restOf(a: number, b: number, product: number): number {
  const [aHigh, bHigh] = [upperHalf(a), upperHalf(b)]
  const [aLow, bLow] = [a - aHigh, b - bHigh]
  return aLow * bLow - (product - aHigh * bHigh - aLow * bHigh - aHigh * bLow)
}

function upperHalf(x: number): number {
  const wide = (2 ** 27 + 1) * x
  return wide - (wide - x)
}

const pairs = new WeakMap<Exact, Pair[]>()

/** A ratio over a power of ten; the few that units need are kept with their ratio. */
function pairOf(by: Exact, places: number): Pair {
  const known = pairs.get(by) ?? []
  pairs.set(by, known)
  const at = places + MOST_DIGITS
  known[at] ??= split(by.over(new Exact(10).power(places)))
  return known[at]
}

function split(ratio: Exact): Pair {
  const high = ratio.valueOf()
  return { high, low: ratio.minus(binaryOf(high)).valueOf() }
}

/** A number as it is held, in halves of halves, and not as it is written. */
function binaryOf(x: number): Exact {
  let [whole, halvings] = [x, 0]
  for (; !Number.isInteger(whole); whole *= 2) halvings++
  return new Exact(BigInt(whole), 2n ** BigInt(halvings))
}
