// example: the words of a tap sequence
import { describe, expect, it } from 'vitest'
import { readTaps, USUAL_TAPS } from '../../../src/trade/hole/taps.ts'

const read = (text: string) => {
  const taps = readTaps(text)
  return taps.ok ? taps.value.map(({ name, chamferTurns }) => [name, chamferTurns.value]) : taps.fault
}

describe('taps that can be read', () => {
  it.each([
    [
      USUAL_TAPS,
      [
        ['taper', 8],
        ['second', 4],
        ['bottoming', 1.5]
      ]
    ],
    [
      ' second : 4 , bottoming:1.5 ',
      [
        ['second', 4],
        ['bottoming', 1.5]
      ]
    ],
    ['spiral-point:4.5', [['spiral-point', 4.5]]]
  ])('%s', (text, taps) => {
    expect(read(text)).toEqual(taps)
  })

  it('with a front centre', () => {
    const taps = readTaps('second:4:3 ± 0.2 mm,bottoming:1.5')
    expect(taps.ok && taps.value.map(({ centreMm }) => centreMm && [centreMm.low, centreMm.value, centreMm.high])).toEqual([
      [2.8, 3, 3.2],
      null
    ])
  })

  it('carry their place and why they were assumed', () => {
    const taps = readTaps(USUAL_TAPS, { at: ['taps'], assumed: 'a hand set of three' })
    expect(taps.ok && taps.value[0]!.chamferTurns).toMatchObject({ at: ['taps'], assumed: 'a hand set of three' })
  })
})

it('without a place have none, and keep why they were assumed', () => {
  const taps = readTaps('second:4:3mm', { assumed: 'a hand set' })
  expect(taps.ok && taps.value[0]).toMatchObject({ chamferTurns: { at: [], assumed: 'a hand set' }, centreMm: { at: [] } })
})

describe('taps that cannot', () => {
  it.each([
    ['', '"" among the taps'],
    ['taper:8,', '"" among the taps'],
    ['taper', '"taper" among the taps'],
    ['taper:8, second ', '"second" among the taps'],
    ['taper:8:2', 'front centre "2" of the tap taper'],
    ['taper:8:2mm:1', '"taper:8:2mm:1" among the taps'],
    ['taper:8,5', '"5" among the taps'],
    [':8', 'tap name ""'],
    ['taper:', 'chamfer "" of the tap taper'],
    ['taper:-8', 'chamfer "-8" of the tap taper'],
    ['taper:8P', 'chamfer "8P" of the tap taper'],
    ['taper:Infinity', 'chamfer "Infinity" of the tap taper'],
    ['taper:8,taper:4', 'two taps named taper'],
    ['second:4,taper:8', 'tap taper with a chamfer of 8 pitches after second with 4'],
    ['a:8,b:2,c:4', 'tap c with a chamfer of 4 pitches after b with 2'],
    ['a:4,b:4', 'tap b with a chamfer of 4 pitches after a with 4'],
    ['t\u001b[31m:8', 'tap name "t\\u{1b}[31m"']
  ])('%j', (text, found) => {
    expect(read(text)).toMatchObject({ found })
  })

  it('a name in capitals is offered in small letters', () => {
    expect(read('Taper:8')).toMatchObject({ near: 'taper' })
    expect(read('Spiral Point:8')).toMatchObject({ near: 'spiral-point' })
    expect(read('Spiral _ Point:8')).toMatchObject({ near: 'spiral-point' })
  })
})
