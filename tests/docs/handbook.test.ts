// snapshot: the generated pages of the handbook; a stale page fails, `npm run docs` writes it anew
import { describe, expect, it } from 'vitest'
import { commandsPage } from './commands-page.ts'
import { inExampleFolder } from './example-output.ts'
import { formulasPage, ROOMS } from './formulas-page.ts'
import { jobFilePage } from './job-file-page.ts'
import { quantitiesPage } from './quantities-page.ts'
import { rulesPage } from './rules-page.ts'
import { sourcesPage } from './sources-page.ts'

const PAGES: readonly (readonly [file: string, page: () => string])[] = [
  ['rules.md', rulesPage],
  ['sources.md', sourcesPage],
  ['job-file.md', jobFilePage],
  ['quantities.md', quantitiesPage],
  ...ROOMS.map(room => [`formulas/${room}.md`, () => formulasPage(room)] as const)
]

it.each(PAGES)('%s is current', async (file, page) => {
  const text = page()
  expect(text.split('\n').slice(0, 3).join(' ')).toContain('Generated: do not edit.')
  await expect(text).toMatchFileSnapshot(`../../docs/${file}`)
})

describe('with examples run', () => {
  inExampleFolder()

  it('commands.md is current', async () => {
    await expect(await commandsPage()).toMatchFileSnapshot('../../docs/commands.md')
  })
})
