// table: Bayes' rule and what counts as one fault, by hand, on two readings that are off by one volt each
import { describe, expect, it } from 'vitest'
import { diagnosed } from '../../../src/trade/proof/diagnosis.ts'
import { type Fault, HEALTHY } from '../../../src/trade/proof/fault.ts'
import { beyond } from '../../../src/trade/proof/gaussian.ts'
import { adding, addingUp, type Volts } from './adding-up.ts'

function judged(faults: readonly Fault[], readings: Volts) {
  const { first, again } = addingUp(readings.length)
  const diagnosis = diagnosed(first, faults, readings)
  const ranked = diagnosis.suspects.flatMap(({ members }) => members)
  return {
    ...diagnosis,
    ranked,
    groups: diagnosis.suspects.map(({ members }) => members.map(({ fault }) => fault.id)),
    lookedAtAgain: new Set(ranked.filter(({ fitted }) => fitted.predictor === again).map(({ fault }) => fault.id))
  }
}

describe('of three, after 4 V and 1 V', () => {
  const three = () => judged([HEALTHY, adding('left', [5, 2]), adding('right', [0, 5])], [4, 1])
  // Squared distances 17, 2 and 32. A circuit in order has 50 of 58 parts beforehand, the two open ones four each.
  const parts = [4 * Math.exp(-2 / 2), 50 * Math.exp(-17 / 2), 4 * Math.exp(-32 / 2)]
  const whole = parts.reduce((a, b) => a + b, 0)

  it('each has its prior times how well it fits, the likeliest first', () => {
    const { groups, suspects, ranked } = three()
    expect(groups).toEqual([['left'], ['healthy'], ['right']])
    for (const rows of [suspects, ranked])
      expect(rows.map(one => one.probabilityRatio)).toEqual(parts.map(part => expect.closeTo(part / whole, 12)))
    expect(ranked.map(({ priorRatio }) => priorRatio)).toEqual([4, 50, 4].map(part => expect.closeTo(part / 58, 12)))
  })

  it('the readings fit as well as they fit the best, both of them free', () => {
    expect(three().fitRatio).toBeCloseTo(beyond(2, 2), 12)
  })
})

it('what reads nought was misread by nobody, and leaves its share to the others', () => {
  const misread = [0, 1].map(reading => adding(`misread ${reading}`, [0, 3], { kind: 'misread', reading }))
  const { ranked } = judged([HEALTHY, ...misread], [0, 3])
  expect(ranked.map(({ fault }) => fault.id).sort()).toEqual(['healthy', 'misread 1'])
  // 50 and 3 parts beforehand.
  expect(ranked.find(({ fault }) => fault.id === 'misread 1')!.priorRatio).toBeCloseTo(3 / 53, 12)
})

describe('two faults', () => {
  const of = (left: Volts, near: Volts, readings: Volts, more: readonly Fault[] = []) =>
    judged([...more, adding('near', near), adding('left', left)], readings)

  it('count as one where their readings are half a volt apart, the likelier first', () => {
    const { groups, suspects, ranked } = of([4, 0], [4.5, 0], [4.1, 0])
    expect(groups).toEqual([['left', 'near']])
    expect(suspects[0]!.probabilityRatio).toBeCloseTo(1, 12)
    expect(ranked[0]!.probabilityRatio).toBeCloseTo(1 / (1 + Math.exp((0.1 ** 2 - 0.4 ** 2) / 2)), 12)
  })

  // 0.36 and 0.3 of a deviation squared: where it ends.
  it('count as two where theirs are 0.6 V apart', () => {
    expect(of([4, 0], [4.6, 0], [4.1, 0]).groups).toEqual([['left'], ['near']])
  })

  // Squared distances 1 and 2.25, halves of them 0.6 apart; 16 and 20.25, halves of them 2.1 apart.
  it('count as two where one fits plainly better', () => {
    expect(of([0, 0], [0.5, 0], [-1, 0]).groups).toEqual([['left', 'near']])
    expect(of([0, 0], [0.5, 0], [-4, 0]).groups).toEqual([['left'], ['near']])
  })

  it('stand alone once they are as good as ruled out', () => {
    // 4 of 58 parts, and exp(-8) or exp(-24.5) of the likelihood.
    expect(of([4, 0], [4, 0], [0, 0], [HEALTHY]).groups).toEqual([['healthy'], ['near', 'left']])
    expect(of([7, 0], [7, 0], [0, 0], [HEALTHY]).groups).toEqual([['healthy'], ['near'], ['left']])
  })

  it('as one come before a likelier single one', () => {
    // exp(-1/2) + exp(-1.44/2) = 1.09 beside 1.
    const { groups, suspects } = of([1, 0], [1.2, 0], [0, 0], [adding('alone', [0, 0])])
    expect(groups).toEqual([['left', 'near'], ['alone']])
    const [both, alone] = [Math.exp(-0.5) + Math.exp(-0.72), 1]
    expect(suspects.map(({ probabilityRatio }) => probabilityRatio)).toEqual(
      [both, alone].map(part => expect.closeTo(part / (both + alone), 12))
    )
  })
})

it('a circuit in order is never one of several, whichever is the likelier', () => {
  for (const readings of [
    [0, 0],
    [0.4, 0]
  ])
    expect(judged([HEALTHY, adding('open', [0.4, 0])], readings).groups).toHaveLength(2)
  expect(judged([adding('open', [0, 0]), { ...HEALTHY }], [0, 0]).groups).toEqual([['healthy'], ['open']])
})

describe('looked at again, with the inputs where the readings put them, is', () => {
  const behind = (id: string, logs: number) => adding(id, [Math.sqrt(2 * logs), 0])
  const many = (logs: number, count = 12) => Array.from({ length: count }, (_, i) => behind(`${logs} behind, ${i}`, logs))

  it('what is less than 40 behind the best in logarithms, and a circuit in order', () => {
    const { lookedAtAgain } = judged(
      [adding('best', [0, 0]), ...many(39.5), behind('far', 40.5), adding('healthy', [20, 0], { kind: 'healthy' })],
      [0, 0]
    )
    expect([lookedAtAgain.size, lookedAtAgain.has('far'), lookedAtAgain.has('healthy')]).toEqual([14, false, true])
  })

  it('ten in any case', () => {
    const { lookedAtAgain, ranked } = judged(
      [adding('best', [0, 0]), ...Array.from({ length: 19 }, (_, i) => behind(`${i}`, 50 + i))],
      [0, 0]
    )
    for (const { fault } of ranked.slice(0, 10)) expect(lookedAtAgain).toContain(fault.id)
    for (const { fault } of ranked.slice(11)) expect(lookedAtAgain).not.toContain(fault.id)
  })

  it('everything where there are fewer', () => {
    expect(judged([adding('best', [0, 0]), ...many(60, 4)], [0, 0]).lookedAtAgain.size).toBe(5)
  })
})
