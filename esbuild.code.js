// Runs an example of each command, and keeps the code that V8 made of the built files while it ran, for bin/load.js:
// node esbuild.code.js; with words after it, it is one such call.
import { spawnSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { codeFile, load, scripts } from './bin/load.js'
import { bundled } from './esbuild.scales.js'

/** Their work takes far longer than their start. */
const LONG = ['measure', 'compare', 'sweep', 'solve', 'sheet']

async function calls() {
  const stdin = {
    contents: "export { COMMANDS } from './list.ts'; export { splitLine } from './split-line.ts'",
    resolveDir: resolve('src/commands'),
    loader: 'ts'
  }
  const { outputFiles } = await build({ ...bundled, stdin, external: ['*.run.ts'], write: false })
  const { COMMANDS, splitLine } = await import(`data:text/javascript,${encodeURIComponent(outputFiles[0].text)}`)
  return COMMANDS.filter(({ name }) => !LONG.includes(name)).map(({ examples }) => splitLine(examples[0]).value)
}

function keep() {
  for (const [file, script] of scripts) writeFileSync(codeFile(file), script.createCachedData())
}

function call(words) {
  const { status } = spawnSync(process.execPath, [fileURLToPath(import.meta.url), ...words], { stdio: ['ignore', 'ignore', 'inherit'] })
  if (status !== 0 && status !== 1) throw new Error(`fettle ${words.join(' ')} ended with ${status}`)
}

if (process.argv.length > 2) {
  process.on('exit', keep)
  load('main.cjs').start()
} else for (const words of await calls()) call(words)
