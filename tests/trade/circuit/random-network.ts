import fc from 'fast-check'
import type { PlainElement, PlainNetwork } from '../../../src/trade/circuit/network.ts'

/** Evenly spread; a library's liking for the least and greatest would leave most networks dead. */
function even(least: number, greatest: number): fc.Arbitrary<number> {
  return fc.noBias(fc.integer({ min: 0, max: 1_000_000 })).map(n => least + ((greatest - least) * n) / 1_000_000)
}

/** Ohms from a stout bond to a small resistor. */
const someOhm = even(-3.3, 4).map(power => 10 ** power)
const someVolt = even(-30, 30)
const someAmp = even(-10, 10)

interface Draft {
  readonly kind: 'link' | 'ideal' | 'source' | 'resistor' | 'draw'
  readonly ohm: number
  readonly volt: number
  readonly amp: number
  readonly turned: boolean
  readonly ends: readonly [number, number]
}

function draft(...kinds: Draft['kind'][]): fc.Arbitrary<Draft> {
  const ends = fc.tuple(fc.noBias(fc.nat(1000)), fc.noBias(fc.nat(1000)))
  return fc.record({ kind: fc.constantFrom(...kinds), ohm: someOhm, volt: someVolt, amp: someAmp, turned: fc.boolean(), ends })
}

function element({ kind, ohm, volt, amp }: Draft, id: string, from: string, to: string): PlainElement {
  switch (kind) {
    case 'link':
      return { kind: 'resistor', id, from, to, resistanceOhm: 0 }
    case 'resistor':
      return { kind: 'resistor', id, from, to, resistanceOhm: ohm }
    case 'ideal':
      return { kind: 'source', id, from, to, sourceV: volt, insideOhm: 0 }
    case 'source':
      return { kind: 'source', id, from, to, sourceV: volt, insideOhm: ohm }
    case 'draw':
      return { kind: 'draw', id, from, to, drawA: amp }
  }
}

/**
 * A network that has an answer: a tree of anything that ties, so that no node floats,
 * and more elements across it that have resistance or a fixed current, so that no way round is without resistance.
 */
export const soundNetwork: fc.Arbitrary<PlainNetwork> = fc
  .tuple(
    draft('ideal', 'source'),
    fc.array(draft('link', 'ideal', 'source', 'resistor', 'resistor'), { minLength: 1, maxLength: 10 }),
    fc.array(draft('source', 'resistor', 'resistor', 'draw'), { maxLength: 12 })
  )
  .map(([first, rest, across]) => {
    const trunk = [first, ...rest]
    const name = (node: number) => (node === 0 ? 'chassis' : `node ${node}`)
    const tied = trunk.map((one, i) => {
      const [older, newer] = [name(one.ends[0] % (i + 1)), name(i + 1)]
      return one.turned ? element(one, `tie ${i}`, newer, older) : element(one, `tie ${i}`, older, newer)
    })
    const more = across.map((one, i) => {
      const from = one.ends[0] % (trunk.length + 1)
      const to = (from + 1 + (one.ends[1] % trunk.length)) % (trunk.length + 1)
      return element(one, `across ${i}`, name(from), name(to))
    })
    return { ground: 'chassis', elements: [...tied, ...more] }
  })
