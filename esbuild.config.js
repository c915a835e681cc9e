// Builds src into dist: one entry, one lazily loaded piece per command.
import { rmSync } from 'node:fs'
import { readFileSync } from 'node:fs'
import { build } from 'esbuild'

rmSync('dist', { recursive: true, force: true })

const { metafile } = await build({
  entryPoints: ['src/main.ts'],
  outdir: 'dist',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20.19',
  chunkNames: 'pieces/[name]-[hash]',
  legalComments: 'linked',
  metafile: true,
  define: { FETTLE_VERSION: JSON.stringify(JSON.parse(readFileSync('package.json', 'utf8')).version) },
  logLevel: 'warning',
  // CommonJS libraries inside the bundle still call require() for Node's own modules.
  banner: { js: "import { createRequire as fettleRequire } from 'node:module'; const require = fettleRequire(import.meta.url);" }
})
console.log(`built ${Object.keys(metafile.outputs).length} files into dist`)
