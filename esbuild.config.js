// Builds src into dist: every module that is imported late becomes one file of its own with all it needs,
// so that a command opens two or three files. Splitting shared code apart would make it open dozens.
import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { basename, resolve } from 'node:path'
import { build } from 'esbuild'

const { version } = JSON.parse(readFileSync('package.json', 'utf8'))
const OUT = 'dist'
const outName = file => basename(file).replace(/\.ts$/, '.js')

/** Leaves a late import standing as an import of the built file, and notes that this file is to be built. */
const late = found => ({
  name: 'late',
  setup({ onResolve }) {
    onResolve({ filter: /^\..*\.ts$/ }, ({ kind, path, resolveDir }) => {
      if (kind !== 'dynamic-import') return undefined
      found.add(resolve(resolveDir, path))
      return { path: `./${outName(path)}`, external: true }
    })
  }
})

/** The option parser would load it at every start, only to start programs that are not ours. */
const noChildProcess = {
  name: 'no child process',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^node:child_process$/ }, ({ path }) => ({ path, namespace: 'left-out' }))
    onLoad({ filter: /.*/, namespace: 'left-out' }, () => ({ contents: 'export {}' }))
  }
}

async function built(file) {
  const found = new Set()
  const { metafile } = await build({
    entryPoints: [file],
    outfile: `${OUT}/${outName(file)}`,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20.19',
    minifyWhitespace: true,
    minifySyntax: true,
    legalComments: 'eof',
    metafile: true,
    logLevel: 'warning',
    plugins: [late(found), noChildProcess],
    define: { FETTLE_VERSION: JSON.stringify(version) },
    // CommonJS libraries inside the bundle still call require() for Node's own modules.
    banner: { js: "import { createRequire as fettleRequire } from 'node:module'; const require = fettleRequire(import.meta.url);" }
  })
  return { inputs: Object.keys(metafile.inputs).filter(input => !input.startsWith('left-out')), late: [...found] }
}

rmSync(OUT, { recursive: true, force: true })
const pieces = {}
const waiting = [resolve('src/main.ts')]
for (const file of waiting) {
  const name = outName(file)
  if (pieces[name] !== undefined) throw new Error(`two late modules are both named ${name}`)
  const { inputs, late: next } = await built(file)
  pieces[name] = { inputs, late: next.map(outName) }
  waiting.push(...next.filter(one => !waiting.includes(one)))
}
writeFileSync(`${OUT}/pieces.json`, `${JSON.stringify(pieces, null, 1)}\n`)
console.log(`built ${waiting.length} files into ${OUT}`)
