// The tests of one room in one file, with the code of the room as it is changed on the way in.
import { mkdirSync } from 'node:fs'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'
import { testsOf } from './tests-of-room.js'

/** What is remembered from before a change would hide it, and what is remembered from it would be there afterwards: all is worked out anew. */
const FEW_RECALLED = /\/src\/formula\/few-recalled\.ts$/
const NOTHING_RECALLED = 'export const fewRecalled = (most, of) => of'

/** Where the file stands, to be imported for its `collected`. */
export async function bundledTests(room, { name, changed }) {
  mkdirSync('mutation', { recursive: true })
  const outfile = resolve(`mutation/${name}-${room}.mjs`)
  const contents = [`export { collected } from 'vitest'`, ...testsOf(room).map(file => `await import('./${file}')`)].join('\n')
  const filter = new RegExp(`/src/trade/${room}/.*\\.ts$`)
  const setup = ({ onLoad }) => {
    onLoad({ filter }, async ({ path }) => ({ contents: await changed(path), loader: 'ts' }))
    onLoad({ filter: FEW_RECALLED }, () => ({ contents: NOTHING_RECALLED }))
  }
  await build({
    stdin: { contents, resolveDir: process.cwd() },
    alias: { vitest: resolve('tests/scripts/tests-at-hand.js') },
    define: { FETTLE_VERSION: '"test"' },
    // What is written as CommonJS asks for what Node has.
    banner: { js: "import { createRequire as requiring } from 'node:module'; const require = requiring(import.meta.url);" },
    inject: [resolve('tests/scripts/same-every-time.ts')],
    plugins: [{ name, setup }],
    ...{ bundle: true, format: 'esm', platform: 'node', target: 'node20.19', outfile, logLevel: 'error' }
  })
  return pathToFileURL(outfile).href
}
