import { Exact } from './exact.ts'

/** A ratio as two numbers: the nearest one, which is cut into halves too, and the nearest to what that leaves over. */
interface Pair extends Halves {
  readonly low: number
}

/** A number, and the two that it is the sum of, whose products with such halves are exact. */
interface Halves {
  readonly whole: number
  readonly upper: number
  readonly lower: number
}

/** A decimal in parts that are whole and small: (lead × 10^trailing + trail) / 10^places. */
interface Decimal {
  readonly lead: Halves
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

/** A ratio that many decimals are taken times. */
export class QuickRatio {
  private readonly by: Exact
  /** The ratio over powers of ten; the few that are asked for are kept. */
  private readonly pairs: Pair[] = []

  constructor(by: Exact) {
    this.by = by
  }

  /**
   * A decimal as written times the ratio, to the nearest number: what `Exact` gives, without its long whole numbers.
   * Undefined where the digits are too many, or where the nearest number cannot be told in two numbers' worth of digits.
   */
  times(text: string): number | undefined {
    const decimal = lastDecimal(text)
    if (decimal === undefined) return undefined
    const { lead, trail, trailing, places } = decimal
    const share = this.over(places - trailing)
    const product = lead.whole * share.whole
    const rest = restOf(lead, share, product) + lead.whole * share.low + (trail === 0 ? 0 : trail * this.over(places).whole)
    const doubt = DOUBT * Math.abs(product)
    const nearest = product + (rest - doubt)
    return nearest === product + (rest + doubt) ? nearest : undefined
  }

  private over(places: number): Pair {
    const at = places + MOST_DIGITS
    this.pairs[at] ??= split(this.by.over(new Exact(10).power(places)))
    return this.pairs[at]
  }
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
  return { lead: halvesOf(lead), trail, trailing: Math.max(0, digits - LEAD), places: Math.max(0, places) }
}

/** What rounding took from a product, to the last bit (Dekker 1971, memory): the products of the halves are exact. */
function restOf(a: Halves, b: Halves, product: number): number {
  return a.lower * b.lower - (product - a.upper * b.upper - a.lower * b.upper - a.upper * b.lower)
}

function halvesOf(whole: number): Halves {
  const wide = (2 ** 27 + 1) * whole
  const upper = wide - (wide - whole)
  return { whole, upper, lower: whole - upper }
}

function split(ratio: Exact): Pair {
  const nearest = ratio.valueOf()
  return { ...halvesOf(nearest), low: ratio.minus(binaryOf(nearest)).valueOf() }
}

/** A number as it is held, in halves of halves, and not as it is written. */
function binaryOf(x: number): Exact {
  let [whole, halvings] = [x, 0]
  for (; !Number.isInteger(whole); whole *= 2) halvings++
  return new Exact(BigInt(whole), 2n ** BigInt(halvings))
}
