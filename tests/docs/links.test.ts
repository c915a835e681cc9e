// property: every link of the handbook leads somewhere, and the handbook keeps to its words
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { anchorOf } from './markdown.ts'

const PAGES = [
  'README.md',
  'DEVELOPERS.md',
  'CHANGELOG.md',
  ...readdirSync('docs', { recursive: true, encoding: 'utf8' })
    .filter(name => name.endsWith('.md'))
    .map(name => `docs/${name}`)
].filter(existsSync)

describe.each(PAGES)('%s', page => {
  const text = readFileSync(page, 'utf8')
  const prose = text.replace(/^```.*?^```/gms, '')
  const links = [...prose.matchAll(/\]\(([^)\s]+)\)/g)].map(([, target]) => target!).filter(target => !/^https?:/.test(target))

  it('links to what is there', () => {
    expect(links.filter(target => !leadsSomewhere(page, target))).toEqual([])
  })

  it('prints no word that promises too much, and nothing that is no figure', () => {
    expect(text).not.toMatch(/\bsafe(ly|ty)?\b/i)
    expect(text).not.toMatch(/\b(NaN|Infinity|undefined)\b|\[object /)
  })
})

it('every page of the handbook is in its contents', () => {
  const contents = readFileSync('docs/README.md', 'utf8')
  const pages = PAGES.filter(page => page.startsWith('docs/') && page !== 'docs/README.md')
  expect(pages.filter(page => !contents.includes(`(${page.slice('docs/'.length)})`))).toEqual([])
})

function leadsSomewhere(page: string, target: string): boolean {
  const [path, anchor] = target.split('#') as [string, string?]
  const file = path === '' ? page : join(dirname(page), path)
  if (!existsSync(file)) return false
  if (anchor === undefined) return true
  const headings = [...readFileSync(file, 'utf8').matchAll(/^#+ (.*)$/gm)].map(([, heading]) => anchorOf(heading!))
  return headings.includes(anchor)
}
