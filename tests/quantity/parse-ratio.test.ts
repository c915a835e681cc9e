// example: tapers
import { describe, expect, it } from 'vitest'
import { parseRatio } from '../../src/quantity/parse-ratio.ts'

const ACCEPTED = 'a ratio, as "1:16", "1/16" or "0.0625"'

describe('a ratio', () => {
  it.each([
    ['1:16', 0.0625],
    ['1 : 16', 0.0625],
    ['1:20.955', 1000 / 20955],
    ['1/16', 0.0625],
    ['0.0625', 0.0625],
    ['1/2:12', 1 / 24]
  ])('%s', (text, value) => {
    expect(parseRatio(text)).toEqual({ ok: true, value: { value, low: value, high: value, text } })
  })

  it.each([
    ['1:0', '"1:0" is a ratio to nought', undefined],
    ['1:1e99', 'a number in "1:1e99" has an exponent beyond 15', undefined],
    ['steep', '"steep" cannot be read as a quantity', undefined],
    ['', 'an empty text', undefined],
    ['1 mm', '"1 mm" is a length', undefined],
    ['1:16,5', 'decimal comma in "1:16,5"', '1:16.5']
  ])('%s is none', (text, found, near) => {
    const read = parseRatio(text)
    expect(read.ok).toBe(false)
    if (!read.ok) expect([read.fault.found, read.fault.near]).toEqual([found, near])
    if (!read.ok && near === undefined && text !== '') expect(read.fault.accepted).toBe(ACCEPTED)
  })
})
