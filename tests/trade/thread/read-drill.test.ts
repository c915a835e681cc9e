// example: how a drill is read, and what is said of one that is not
import { describe, expect, it } from 'vitest'
import { readDrill } from '../../../src/trade/thread/read-drill.ts'

describe('reads', () => {
  it.each([
    ['#7', 'number', '#7', 5.1054],
    ['No. 7', 'number', '#7', 5.1054],
    ['no 7', 'number', '#7', 5.1054],
    ['No.7', 'number', '#7', 5.1054],
    [' #7 ', 'number', '#7', 5.1054],
    ['number 7', 'number', '#7', 5.1054],
    ['#07', 'number', '#7', 5.1054],
    ['F', 'letter', 'F', 6.5278],
    ['f', 'letter', 'F', 6.5278],
    ['letter F', 'letter', 'F', 6.5278],
    ['7/16', 'fraction', '7/16', 11.1125],
    ['14/32', 'fraction', '7/16', 11.1125],
    ['7/16 in', 'fraction', '7/16', 11.1125],
    ['1-1/4 in', 'fraction', '1-1/4', 31.75],
    ['1  1/4', 'fraction', '1-1/4', 31.75],
    ['1 in', 'fraction', '1 in', 25.4],
    ['0.4375 in', 'fraction', '7/16', 11.1125],
    ['0.201 in', 'number', '#7', 5.1054],
    ['0.25 in', 'fraction', '1/4', 6.35],
    ['6.35 mm', 'fraction', '1/4', 6.35],
    ['10.2 mm', 'metric', '10.2 mm', 10.2],
    ['10.2mm', 'metric', '10.2 mm', 10.2],
    ['10.23 mm', null, '10.23 mm', 10.23],
    ['0.2012 in', null, '5.1105 mm', 5.11048]
  ])('%j as %s drill %s', (text, set, name, diameterMm) => {
    const read = readDrill(text)
    expect(read).toMatchObject({ ok: true, value: { set, name } })
    if (read.ok) expect(read.value.diameterMm).toBeCloseTo(diameterMm, 9)
  })
})

describe('refuses', () => {
  it.each([
    ['#81', 'no number drill #81', '#1 to #80', '#80'],
    ['#0', 'no number drill #0', '#1 to #80', '#1'],
    ['7/65', 'no fraction drill 7/65', '64ths', '7/64'],
    ['12-1/4', 'no fraction drill 12-1/4', '64ths of an inch up to 1-1/2', '1-1/2'],
    ['1/200', 'no fraction drill 1/200', '64ths of an inch up to 1-1/2', '1/64'],
    ['2-1/64', 'no fraction drill 2-1/64', '64ths', '1-1/2'],
    ['1/0', 'no fraction drill 1/0', '64ths', '1-1/2'],
    ['0/0', 'no fraction drill 0/0', '64ths', undefined],
    ['60 mm', 'no drill of "60 mm"', '0.2 mm to 50 mm', '50 mm'],
    ['-3 mm', 'no drill of "-3 mm"', '0.2 mm to 50 mm', '0.2 mm'],
    ['10,2 mm', 'comma', '10.2 mm', '10.2 mm'],
    ['10 mm ± 0.1 mm', 'has bounds', 'one size', undefined],
    ['10 N', '', 'a drill as #7', undefined],
    ['tap #7', '"tap #7"', 'a drill as #7', undefined],
    ['#7 or so', '"#7 or so"', 'a drill as #7', undefined],
    ['F drill', '"F drill"', 'a drill as #7', undefined],
    ['over 7/16', '"over 7/16"', 'a drill as #7', undefined],
    ['7/16 or so', 'unknown unit "or so"', 'a drill as #7', undefined],
    ['M7', '"M7"', 'a drill as #7', undefined],
    ['', 'no drill', 'a drill as #7', undefined],
    ['x'.repeat(41), 'no drill', 'a drill as #7', undefined],
    ['\u001b[31m', '', 'a drill as #7', undefined]
  ])('%j', (text, found, accepted, near) => {
    const read = readDrill(text)
    if (read.ok) throw new Error(`${text} was read`)
    expect(read.fault.found).toContain(found)
    expect(read.fault.accepted).toContain(accepted)
    expect(read.fault.near).toBe(near)
    expect(Object.values(read.fault).join()).not.toMatch(/\p{Cc}|NaN|undefined|Infinity/u)
  })
})

it.each([
  ['7', '#7 or 7 mm'],
  ['81', '81 mm or 81 in'],
  ['0.201', '0.201 mm or 0.201 in']
])('a bare %s does not say which drill: %s', (text, accepted) => {
  expect(readDrill(text)).toEqual({ ok: false, fault: { found: `"${text}" does not say which drill`, accepted } })
})
