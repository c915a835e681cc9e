import { existsSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core'

const CHROMIUM = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(existsSync)
export const CHROMIUM_THERE = CHROMIUM !== undefined

export function launched(): Promise<Browser> {
  if (CHROMIUM === undefined) throw new Error('no chromium here')
  return chromium.launch({ executablePath: CHROMIUM, chromiumSandbox: false })
}

/** Widths in CSS pixels; A4 less its margins is 180 mm of 96 to the inch. */
export const VIEWS: { readonly [name: string]: BrowserContextOptions & { readonly print?: true } } = {
  'a small telephone': { viewport: { width: 360, height: 740 } },
  'a small telephone at night': { viewport: { width: 360, height: 740 }, colorScheme: 'dark' },
  'a narrow window': { viewport: { width: 800, height: 900 } },
  'a desk': { viewport: { width: 1280, height: 900 } },
  'a desk at night': { viewport: { width: 1280, height: 900 }, colorScheme: 'dark' },
  'A4 paper': { viewport: { width: 680, height: 1000 }, print: true },
  'A4 paper from a dark screen': { viewport: { width: 680, height: 1000 }, colorScheme: 'dark', print: true }
}

export interface Seen {
  readonly page: Page
  /** Everything that the page asked the network for. */
  readonly asked: readonly string[]
}

/** A page in a browser that runs no script of it. */
export async function seen(browser: Browser, text: string, view: keyof typeof VIEWS): Promise<Seen> {
  const { print, ...options } = VIEWS[view]!
  const context = await browser.newContext({ ...options, javaScriptEnabled: false })
  const page = await context.newPage()
  const asked: string[] = []
  page.on('request', request => asked.push(request.url()))
  if (print) await page.emulateMedia({ media: 'print' })
  await page.setContent(text)
  return { page, asked }
}

/** Runs one of the scripts beside this file in the page. */
export async function runIn<T>(page: Page, script: 'flaws' | 'outline'): Promise<T> {
  return page.evaluate<T>(await readFile(`tests/outside/browser/${script}.js`, 'utf8'))
}
