type Numeric = Exact | bigint | number

const DECIMAL = /^([+-]?)(\d*)\.?(\d*)(?:e([+-]?\d+))?$/i

/** A ratio of whole numbers. Conversions and bounds are worked out in it, so that 23 °F is -5 °C and 11.5 - 0.2 is 11.3 to the last bit. */
export class Exact {
  readonly top: bigint
  readonly bottom: bigint

  constructor(top: Numeric, bottom: Numeric = 1n) {
    if (typeof top === 'bigint' && typeof bottom === 'bigint') {
      this.top = bottom < 0n ? -top : top
      this.bottom = bottom < 0n ? -bottom : bottom
    } else {
      const [a, b] = [ratioOf(top), ratioOf(bottom)]
      const sign = b.top < 0n ? -1n : 1n
      this.top = sign * a.top * b.bottom
      this.bottom = sign * a.bottom * b.top
    }
  }

  plus(other: Exact): Exact {
    return new Exact(this.top * other.bottom + other.top * this.bottom, this.bottom * other.bottom)
  }

  minus(other: Exact): Exact {
    return new Exact(this.top * other.bottom - other.top * this.bottom, this.bottom * other.bottom)
  }

  times(other: Exact): Exact {
    return new Exact(this.top * other.top, this.bottom * other.bottom)
  }

  over(other: Exact): Exact {
    return new Exact(this.top * other.bottom, this.bottom * other.top)
  }

  power(whole: number): Exact {
    const n = BigInt(Math.abs(whole))
    return whole < 0 ? new Exact(this.bottom ** n, this.top ** n) : new Exact(this.top ** n, this.bottom ** n)
  }

  negated(): Exact {
    return new Exact(-this.top, this.bottom)
  }

  size(): Exact {
    return this.top < 0n ? this.negated() : this
  }

  clone(): Exact {
    return this
  }

  /** The nearest number there is. */
  valueOf(): number {
    const size = this.top < 0n ? -this.top : this.top
    const nearest = size < EXACT_LIMIT && this.bottom < EXACT_LIMIT ? Number(size) / Number(this.bottom) : longDivision(size, this.bottom)
    return this.top < 0n ? -nearest : nearest
  }
}

/** Below this every whole number is a number exactly, and one division rounds once. */
const EXACT_LIMIT = 2n ** 53n

function longDivision(top: bigint, bottom: bigint): number {
  const shift = 66 + bitsOf(bottom) - bitsOf(top)
  const [a, b] = shift > 0 ? [top << BigInt(shift), bottom] : [top, bottom << BigInt(-shift)]
  // The last bit stands for whatever is left over, so that the one rounding goes the right way.
  const quotient = a / b
  return Number(a % b === 0n ? quotient : quotient | 1n) * 2 ** -shift
}

function bitsOf(n: bigint): number {
  return n.toString(16).length * 4
}

function ratioOf(x: Numeric): { readonly top: bigint; readonly bottom: bigint } {
  if (typeof x === 'bigint') return { top: x, bottom: 1n }
  return typeof x === 'number' ? exactOf(String(x)) : x
}

/** Reads a decimal as it is written: `0.0254` is 254 in 10000. */
export function exactOf(text: string): Exact {
  const [, sign = '', whole = '', part = '', exponent = '0'] = DECIMAL.exec(text) ?? []
  const digits = BigInt(whole + part || '0') * (sign === '-' ? -1n : 1n)
  const scale = Number(exponent) - part.length
  return scale < 0 ? new Exact(digits, 10n ** BigInt(-scale)) : new Exact(digits * 10n ** BigInt(scale))
}

export const NOUGHT = new Exact(0n)
