// example: how a tolerance class is read for one thread
import { describe, expect, it } from 'vitest'
import { readClass } from '../../../src/trade/thread/tolerance-class.ts'
import { knownThread } from './known-thread.ts'

function read(name: string, text: string | null) {
  const outcome = readClass(text, knownThread(name))
  if (!outcome.ok) throw new Error(outcome.fault.found)
  return outcome.value
}

describe('reads', () => {
  it.each([
    ['6H/6g', '6H', '6g'],
    ['6g / 6H', '6H', '6g'],
    ['4H5H', '4H5H', '6g'],
    ['5g6g', '6H', '5g6g'],
    ['6G/6e', '6G', '6e'],
    ['6H6H', '6H', '6g'],
    [' 4h ', '6H', '4h'],
    ['7H/9g8g', '7H', '9g8g']
  ])('%j as %s and %s', (text, internal, external) => {
    expect(read('M12', text)).toMatchObject({ system: 'metric', internal: { name: internal }, external: { name: external } })
  })

  it('takes pitch diameter first, then crest', () => {
    expect(read('M12', '4H5H').internal).toMatchObject({ pitchGrade: '4', crestGrade: '5', position: 'H', assumed: null })
  })

  it('says what it assumed for the half nobody gave', () => {
    const { internal, external } = read('M12', '6G')
    expect([internal.assumed, external.assumed]).toEqual([null, 'usual class 6g'])
  })

  it('says where the usual class is not in the standard', () => {
    expect(read('M1.6x0.2', null).internal.assumed).toBe('ISO 965-1 has no 6H for M1.6x0.2: the widest it has up to grade 6')
    expect(read('M12', null)).toMatchObject({ internal: { assumed: 'usual class 6H' }, external: { assumed: 'usual class 6g' } })
  })

  it('takes the class of the designation, unless another is given', () => {
    expect(read('M12-6G', null).internal.name).toBe('6G')
    expect(read('M12-6G', '5H').internal.name).toBe('5H')
  })

  // The tables have grade 4 alone at pitch 0.2, and 4 and 5 at 0.25.
  it.each([
    ['M1.6x0.2', '4H'],
    ['M2x0.25', '5H'],
    ['M2.5x0.35', '6H']
  ])('has a class for the hole of %s where the tables have no 6H: %s', (name, internal) => {
    expect(read(name, null)).toMatchObject({ internal: { name: internal }, external: { name: '6g' } })
  })
})

describe('refuses', () => {
  it.each([
    ['M12', '9H', 'no grade 9 for the pitch diameter of the internal thread', 'grade 4, 5, 6, 7, 8', '8H'],
    ['M12', '6g5g', 'no grade 5 for the major diameter of the external thread', 'grade 4, 6, 8', '4g'],
    ['M1.6x0.2', '6H', 'no grade 6 for the pitch diameter', 'grade 4', '4H'],
    ['M3', '8H', 'no grade 8', 'grade 4, 5, 6, 7', '7H'],
    ['M2', '6e', 'no position e for the external thread', 'position f, g, h', undefined],
    ['M2x0.25', '6f', 'no position f for the external thread', 'position g, h', undefined],
    ['M12', '6K', 'no position K for the internal thread', 'position G, H (small letters are external)', undefined],
    ['M12', '6k', 'no position k for the external thread', 'position e, f, g, h (capitals are internal)', undefined],
    ['M12', '5g6h', 'two positions', '6H/6g', '5g6g'],
    ['M12', '6H/5H', 'two internal classes in "6H/5H"', '6H/6g', undefined],
    ['M12', '6H/6g/6e', 'two external classes', '6H/6g', undefined],
    ['M12', 'H6', 'no tolerance class', '6H/6g', undefined],
    ['M12', '6', 'no tolerance class', '6H/6g', undefined],
    ['M12', 'x6H', 'no tolerance class', '6H/6g', undefined],
    ['M12', '6H or so', 'no tolerance class', '6H/6g', undefined],
    ['M12', '', 'no tolerance class', '6H/6g', undefined],
    ['M12', '2B', 'no position B', 'position G, H', undefined]
  ])('%s %j', (name, text, found, accepted, near) => {
    const outcome = readClass(text, knownThread(name))
    if (outcome.ok) throw new Error(`${text} was read`)
    expect(outcome.fault.found).toContain(found)
    expect(outcome.fault.accepted).toContain(accepted)
    expect(outcome.fault.near).toBe(near)
  })
})
