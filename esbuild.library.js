// Builds the pure rooms for other programs: each file of theirs becomes one file with its types, so that what is
// imported stays one and the same (the working is kept in one place) and nothing is loaded that is not asked for.
import { copyFileSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { dirname, relative, resolve } from 'node:path'
import { build } from 'esbuild'
import ts from 'typescript'
import { scales, scalesByTable } from './esbuild.scales.js'

const ROOMS = ['quantity', 'formula', 'trade', 'fitting']
const OUT = 'dist/lib'
/** Only the build converts by the library that is in it; the tables that it works out go along instead. */
const LEFT_OUT = /unit-class\.ts$/

const all = ROOMS.flatMap(room =>
  readdirSync(`src/${room}`, { recursive: true })
    .map(name => `src/${room}/${name}`)
    .filter(name => /\.[tj]s$/.test(name) && !LEFT_OUT.test(name))
)

/** Types that were written by hand go along as they are. */
const declared = all.filter(name => name.endsWith('.d.ts'))
const files = all.filter(name => !declared.includes(name))

/** Neighbours stay files of their own, and so do libraries, each once for all that ask for it. */
const apart = found => ({
  name: 'apart',
  setup({ onResolve }) {
    onResolve({ filter: /.*/ }, ({ kind, path, resolveDir }) => {
      if (kind === 'entry-point' || resolveDir.includes('node_modules')) return undefined
      if (path.startsWith('.')) return { path: path.replace(/\.ts$/, '.js'), external: true }
      found.add(path)
      return { path: relative(resolveDir, resolve(`src/library/${path}.js`)).replaceAll('\\', '/'), external: true }
    })
  }
})

const shared = {
  bundle: true,
  format: 'esm',
  platform: 'neutral',
  mainFields: ['module', 'main'],
  target: 'es2023',
  legalComments: 'eof',
  logLevel: 'warning'
}

rmSync(OUT, { recursive: true, force: true })
const libraries = new Set()
await build({ ...shared, entryPoints: files, outdir: OUT, outbase: 'src', plugins: [apart(libraries), scalesByTable(await scales())] })
await build({
  ...shared,
  entryPoints: [...libraries].map(name => ({ in: name, out: name })),
  outdir: `${OUT}/library`,
  minifyWhitespace: true
})
types()
for (const file of declared) copyFileSync(file, file.replace(/^src/, OUT))

/** What each file exports, with the words that stand beside it in the source. */
function types() {
  const sources = files.filter(name => name.endsWith('.ts'))
  const { config } = ts.readConfigFile('tsconfig.json', ts.sys.readFile)
  const { options } = ts.parseJsonConfigFileContent({ ...config, include: [], files: sources }, ts.sys, resolve('.'))
  const program = ts.createProgram(sources, {
    ...options,
    noEmit: false,
    declaration: true,
    emitDeclarationOnly: true,
    rootDir: 'src',
    outDir: OUT
  })
  const { emitSkipped, diagnostics } = program.emit(undefined, (name, text) => ts.sys.writeFile(name, byFile(resolve(name), text)))
  if (emitSkipped || diagnostics.length > 0)
    throw new Error(
      ts.formatDiagnostics(diagnostics, {
        ...ts.sys,
        getNewLine: () => '\n',
        getCanonicalFileName: name => name,
        getCurrentDirectory: () => dirname(resolve(OUT))
      })
    )
}

/** The same, asking for built files alone: the types of a library lie beside its code. */
function byFile(name, text) {
  return text.replace(/(from |import\()(['"])([^'"]+)\2/g, (whole, before, _, path) => {
    if (path.startsWith('.')) return `${before}'${path.replace(/\.ts$/, '.js')}'`
    if (!libraries.has(path)) return whole
    copyFileSync(
      `node_modules/${path}/${JSON.parse(readFileSync(`node_modules/${path}/package.json`, 'utf8')).types}`,
      `${OUT}/library/${path}.d.ts`
    )
    return `${before}'${relative(dirname(name), resolve(`${OUT}/library/${path}.js`)).replaceAll('\\', '/')}'`
  })
}
