// property: the user's words in a message
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { hasHidden, quoted } from '../../src/quantity/quoted.ts'

describe('quoted words', () => {
  it('are as they were, where nothing hides in them', () => {
    expect(quoted('6.8 mmm')).toBe('"6.8 mmm"')
  })

  it('show a control character as its code', () => {
    expect(quoted('\u001b[2J')).toBe('"\\u{1b}[2J"')
  })

  it('never act, hide or run on', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary', maxLength: 300 }), fc.string({ maxLength: 300 })), text => {
        const shown = quoted(text)
        expect(hasHidden(shown)).toBe(false)
        expect([...shown].length).toBeLessThanOrEqual(43)
      }),
      { numRuns: 1000 }
    )
  })
})
