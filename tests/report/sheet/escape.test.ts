// property: whatever the words, a page shows them and does nothing of them
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { css, html, markdown, visible } from '../../../src/report/sheet/escape.ts'

const words = fc.oneof(
  fc.string(),
  fc.string({ unit: 'binary' }),
  fc.constantFrom('</style><script>', '"onload="', '\u001b[31m', '\u202ea', '\ud800', '|x|', '\\"')
)

it('html: no markup and no end of an attribute is left', () => {
  fc.assert(
    fc.property(words, text => {
      expect(html(text)).not.toMatch(/[<>"']|&(?!amp;|lt;|gt;|quot;|#39;)/)
    })
  )
})

it('html: what is read off the page is what was written', () => {
  const read = (text: string) =>
    text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&#39;', "'").replaceAll('&amp;', '&')
  fc.assert(
    fc.property(words, text => {
      expect(read(html(text))).toBe(visible(text))
    })
  )
})

it('nothing that cannot be seen is left, and what can be seen is as it was', () => {
  fc.assert(
    fc.property(words, text => {
      expect(visible(text)).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u)
    })
  )
  expect(visible('45 W ± 5 %, Ω, 漢, é')).toBe('45 W ± 5 %, Ω, 漢, é')
  expect(visible('a\u0007b')).toBe('a\\u{7}b')
})

it('css: no string ends and no rule begins', () => {
  fc.assert(
    fc.property(words, text => {
      expect(css(text)).toMatch(/^(?:[A-Za-z0-9]|\\[0-9a-f]+ )*$/)
    })
  )
})

it('markdown: no mark is left that is not escaped', () => {
  fc.assert(
    fc.property(words, text => {
      // An escaped mark stands as a letter would.
      const left = markdown(text).replace(/\\[\\`*_[\]#+\-.)|~$^:=@]/g, 'x')
      expect(left).not.toMatch(/[\\`*_[\]|~$^@<>]|:\/\/|www\./i)
      expect(left).not.toMatch(/^\s*([#+-](\s|$)|--|=|\d+[.)](\s|$))/)
    })
  )
})

it('markdown: figures of the trade stay as they are', () => {
  for (const text of ['12.50 mm (0.4921 in)', 'tee to left+: 1.5 mm2', 'R20 = 4.1 ohm, -5 % to +5 %', 'drill #7!'])
    expect(markdown(text)).toBe(text)
  expect(markdown('- 1')).toBe('\\- 1')
  expect(markdown('1. first')).toBe('1\\. first')
  expect(markdown('http://example.invalid :smile:')).toBe('http\\://example.invalid \\:smile:')
})
