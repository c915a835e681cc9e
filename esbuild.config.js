// Builds src into dist: every module that is imported late becomes one file of its own with all it needs,
// so that a command opens two or three files. Splitting shared code apart would make it open dozens.
// They are CommonJS, because `bin/load.js` hands V8 their code as it was made once (esbuild.code.js).
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { basename, join, resolve } from 'node:path'
import { build } from 'esbuild'
import { bundled, scales, scalesByTable } from './esbuild.scales.js'

const { version } = JSON.parse(readFileSync('package.json', 'utf8'))
const OUT = 'dist'
const outName = file => basename(file).replace(/\.ts$/, '.cjs')

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

/** What libraries would load at every start and we never use: starting other programs, colouring table heads. */
const leftOut = {
  name: 'left out',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^(node:child_process|@colors\/colors.*)$/ }, ({ path }) => ({ path, namespace: 'left-out' }))
    onLoad({ filter: /.*/, namespace: 'left-out' }, () => ({ contents: 'export {}' }))
  }
}

/** Which files name which source, worked out once here: the built program has no source files to look into. */
async function naming() {
  const contents = "export { namingTable } from './naming-files.ts'; export { SOURCES } from '../formula/source.ts'"
  const { outputFiles } = await build({ ...bundled, stdin: { contents, resolveDir: resolve('src/commands'), loader: 'ts' }, write: false })
  const { namingTable, SOURCES } = await import(`data:text/javascript,${encodeURIComponent(outputFiles[0].text)}`)
  return namingTable(resolve('src'), Object.keys(SOURCES))
}

const namingByTable = table => ({
  name: 'naming by table',
  setup({ onLoad }) {
    onLoad({ filter: /src\/commands\/source-files\.ts$/ }, () => ({
      loader: 'ts',
      contents: `const FILES = ${JSON.stringify(table)}
        export function filesNaming(id) { return FILES[id] ?? [] }`
    }))
  }
})

async function built(file, { scalesTable, namingTable }) {
  const found = new Set()
  const { metafile } = await build({
    entryPoints: [file],
    outfile: `${OUT}/${outName(file)}`,
    ...bundled,
    format: 'cjs',
    supported: { 'dynamic-import': false },
    minifyWhitespace: true,
    minifySyntax: true,
    legalComments: 'eof',
    metafile: true,
    plugins: [late(found), leftOut, scalesByTable(scalesTable), namingByTable(namingTable)],
    define: { FETTLE_VERSION: JSON.stringify(version), 'import.meta.url': '__filename' }
  })
  return { inputs: kept(metafile.outputs), late: [...found] }
}

/** What is in a built file: not what was only looked at. */
function kept(outputs) {
  const files = Object.values(outputs).flatMap(({ inputs }) => Object.entries(inputs))
  return files.flatMap(([file, { bytesInOutput }]) => (bytesInOutput > 0 ? [file] : []))
}

/** The libraries inside these files, each with its licence, which asks to go along. */
function thirdParty(files) {
  const folders = new Set(files.flatMap(file => /^.*node_modules\/(?:@[^/]+\/)?[^/]+(?=\/)/.exec(file)?.[0] ?? []))
  return [...folders]
    .map(licenceOf)
    .sort()
    .join(`\n\n${'-'.repeat(72)}\n\n`)
}

function licenceOf(folder) {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
  const file = readdirSync(folder).find(name => /^licen[cs]e/i.test(name))
  if (file === undefined) throw new Error(`${name} comes without its licence`)
  return `${name} ${version} (${license})\n\n${readFileSync(join(folder, file), 'utf8').trim()}`
}

rmSync(OUT, { recursive: true, force: true })
const tables = { scalesTable: await scales(), namingTable: await naming() }
const pieces = {}
const waiting = [resolve('src/main.ts')]
for (const file of waiting) {
  const name = outName(file)
  if (pieces[name] !== undefined) throw new Error(`two late modules are both named ${name}`)
  const { inputs, late: next } = await built(file, tables)
  pieces[name] = { inputs, late: next.map(outName) }
  waiting.push(...next.filter(one => !waiting.includes(one)))
}
writeFileSync(`${OUT}/pieces.json`, `${JSON.stringify(pieces, null, 1)}\n`)
writeFileSync(`${OUT}/THIRD-PARTY.txt`, `${thirdParty(Object.values(pieces).flatMap(({ inputs }) => inputs))}\n`)
console.log(`built ${waiting.length} files into ${OUT}`)
