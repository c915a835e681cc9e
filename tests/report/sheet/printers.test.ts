// property: hostile words do nothing in either form; snapshot: the Markdown of one block of each kind
import { XmlDocument } from 'libxml2-wasm'
import { expect, it } from 'vitest'
import { sheetHtml } from '../../../src/report/sheet/html.ts'
import { sheetMarkdown } from '../../../src/report/sheet/markdown.ts'
import { HOSTILE } from '../../work/sheet/hostile-job.ts'
import { invented } from './invented.ts'

const marks = (page: string) => page.match(/<[a-z/!][^>]*>/g) ?? []
const plainWords = (page: string) => marks(page).map(mark => mark.replace(/"[^"]*"/g, '""'))

it.each(Object.entries(HOSTILE))('%s is shown and adds no mark to the page', (_, words) => {
  const [page, plain] = [sheetHtml(invented(words)), sheetHtml(invented('plain words, and enough of them'))]
  expect(plainWords(page)).toEqual(plainWords(plain))
  expect(page).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u200b-\u202e]/)
})

it.each(Object.entries(HOSTILE))('%s adds no line, cell or mark to the Markdown', (_, words) => {
  const [text, plain] = [sheetMarkdown(invented(words)), sheetMarkdown(invented('plain'))].map(one => one.split('\n'))
  expect(text).toHaveLength(plain!.length)
  for (const [i, line] of text!.entries()) {
    expect(line.match(/(?<!\\)\|/g)?.length ?? 0).toBe(plain![i]!.match(/\|/g)?.length ?? 0)
    expect(line).not.toMatch(/<|(?<!\\)[`[]/.test(plain![i]!) ? /(?!)/ : /<|(?<!\\)`/)
  }
})

it('every drawing is XML', () => {
  const drawings = sheetHtml(invented(HOSTILE.MARKUP)).match(/<svg.*?<\/svg>/gs) ?? []
  expect(drawings).toHaveLength(1)
  for (const svg of drawings) expect(() => XmlDocument.fromString(svg).dispose()).not.toThrow()
})

it('Markdown, one block of each kind', () => {
  expect(sheetMarkdown(invented('words'))).toMatchSnapshot()
})
