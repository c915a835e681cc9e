// example: sheets as a real browser shows them: nothing cut off, nothing on top of anything, nothing missing, nothing fetched
import { readdirSync, readFileSync } from 'node:fs'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { sheetHtml } from '../../src/report/sheet/html.ts'
import { judgedJob } from '../../src/work/job/judged-job.ts'
import { sheetOf } from '../../src/work/sheet/sheet.ts'
import { benchBeside } from '../examples/bench-beside.ts'
import { hostileJob } from '../work/sheet/hostile-job.ts'
import { CHROMIUM_THERE, launched, runIn, seen, VIEWS } from './browser/chromium.ts'

const good = readdirSync('examples').filter(name => /^[^.]+\.yaml$/.test(name))
const files = [...good.map(name => `examples/${name}`), 'examples/bad/jams-in-run-out.yaml']
const jobs = [
  ...files.map(file => ({ name: file, text: readFileSync(file, 'utf8') })),
  { name: 'a job of hostile text', text: hostileJob() }
].map(({ name, text }) => ({ name, page: sheetHtml(sheetOf(judgedJob(name, text, benchBeside(name, text)))) }))

/** The colours of the night are those of every sheet: a few jobs show them. */
const DAY = /^(?!.*(night|dark))/

interface Outline {
  readonly lang: string
  readonly title: string
  readonly headings: readonly number[]
  readonly tables: readonly { readonly caption: string; readonly headless: number; readonly columns: number; readonly cells: number }[]
  readonly drawings: readonly { readonly role: string; readonly named: readonly string[] }[]
  readonly brokenLinks: number
  readonly twice: readonly string[]
  readonly scripts: number
}

describe.skipIf(!CHROMIUM_THERE)('outside program: chromium', () => {
  let browser: Browser
  beforeAll(async () => {
    browser = await launched()
  })
  afterAll(() => browser?.close())

  describe.each(jobs)('$name', ({ name, page: text }) => {
    it.each(Object.keys(VIEWS).filter(view => DAY.test(view) || /gearbox|bad|hostile/.test(name)))(
      'is whole and legible on %s',
      async view => {
        const { page, asked } = await seen(browser, text, view)
        expect(await runIn<readonly string[]>(page, 'flaws')).toEqual([])
        expect(asked).toEqual([])
        await page.context().close()
      }
    )

    it('can be followed by ear', async () => {
      const { page } = await seen(browser, text, 'a desk')
      const { lang, title, headings, tables, drawings, brokenLinks, twice, scripts } = await runIn<Outline>(page, 'outline')
      await page.context().close()
      expect({ lang, brokenLinks, twice, scripts }).toEqual({ lang: 'en', brokenLinks: 0, twice: [], scripts: 0 })
      expect(title).toMatch(/\S/)
      expect(headings.filter(level => level === 1)).toEqual([1])
      for (const [i, level] of headings.entries()) expect(level - (headings[i - 1] ?? 0)).toBeLessThanOrEqual(1)
      for (const { caption, headless, columns, cells } of tables) {
        expect(caption).toMatch(/\S/)
        expect({ headless, columns }).toEqual({ headless: 0, columns: cells })
      }
      for (const { role, named } of drawings) {
        expect(role).toBe('img')
        expect(named.every(words => words.length > 10)).toBe(true)
      }
    })
  })

  it('is printed on A4, the drawings to the scale they name', async () => {
    const [{ page: text } = { page: '' }] = jobs.filter(({ name }) => name.includes('gearbox-preheater'))
    const { page } = await seen(browser, text, 'A4 paper')
    const figure = page.locator('figure').first()
    const [, times] = /scale ([\d.]+) : 1/.exec((await figure.locator('figcaption').textContent()) ?? '') ?? []
    const box = await figure.locator('svg').boundingBox()
    // The bar below the drawing says how long it is; 96 pixels are an inch of 25.4 mm by the definition of CSS.
    const [, barMm] = /^(\d+) mm$/.exec((await figure.locator('text').last().textContent()) ?? '') ?? []
    const bar = await figure.locator('path.outline').nth(-3).getAttribute('d')
    const [, from, to] = /^M([\d.]+) [\d.]+L([\d.]+)/.exec(bar ?? '') ?? []
    const printedMm = (((Number(to) - Number(from)) / 340) * box!.width * 25.4) / 96
    expect(printedMm).toBeCloseTo(Number(barMm) * Number(times), 1)
    await page.context().close()
  })

  it('at night its ground is dark, on paper it is light', async () => {
    const ground = async (view: keyof typeof VIEWS) => {
      const { page } = await seen(browser, jobs[0]!.page, view)
      const colour = await page.evaluate<string>('getComputedStyle(document.body).backgroundColor')
      await page.context().close()
      return Math.max(...colour.match(/\d+/g)!.map(Number))
    }
    expect(await ground('a desk at night')).toBeLessThan(64)
    expect(await ground('a desk')).toBeGreaterThan(230)
    expect(await ground('A4 paper from a dark screen')).toBeGreaterThan(230)
  })
})
