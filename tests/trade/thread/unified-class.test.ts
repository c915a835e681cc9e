// example: tolerance classes of unified threads
import { describe, expect, it } from 'vitest'
import { readUnifiedClass } from '../../../src/trade/thread/unified-class.ts'

const assumed = { internal: 'usual class 2B', external: 'usual class 2A' }

describe('reads', () => {
  it.each([
    [null, '2B', assumed.internal, '2A', assumed.external],
    ['3B', '3B', null, '2A', assumed.external],
    ['1a', '2B', assumed.internal, '1A', null],
    ['2B/3A', '2B', null, '3A', null],
    ['3A / 3B', '3B', null, '3A', null],
    [' 2B ', '2B', null, '2A', assumed.external]
  ])('%s', (text, internal, internalAssumed, external, externalAssumed) => {
    expect(readUnifiedClass(text)).toEqual({
      ok: true,
      value: {
        system: 'unified',
        internal: { name: internal, assumed: internalAssumed },
        external: { name: external, assumed: externalAssumed }
      }
    })
  })
})

describe('refuses', () => {
  it.each([
    ['6H', /"6H" is no tolerance class/],
    ['4B', /"4B"/],
    ['2B/3B', /two internal classes in "2B\/3B"/],
    ['2A/2A', /two external classes/],
    ['', /""/],
    ['2', /"2"/],
    ['12B', /"12B"/],
    ['2BX', /"2BX"/],
    ['12A', /"12A"/],
    ['2AX', /"2AX"/]
  ])('%s', (text, found) => {
    expect(readUnifiedClass(text)).toMatchObject({ ok: false, fault: { found: expect.stringMatching(found) } })
  })
})
