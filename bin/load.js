// Loads what the build made. Beside a file may stand the code that V8 made of it then: where this is the same V8,
// it need not be made again; where it is another, V8 takes no notice of it.
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'
import { Script } from 'node:vm'

const DIST = fileURLToPath(new URL('../dist/', import.meta.url))
const ofNode = createRequire(import.meta.url)
const loaded = new Map()

/** Every file loaded so far: its path, and the script whose code can be kept. */
export const scripts = new Map()

export function load(name) {
  if (loaded.has(name)) return loaded.get(name).exports
  const module = { exports: {} }
  loaded.set(name, module)
  const file = `${DIST}${name}`
  scriptOf(file).runInThisContext()(module, module.exports, requireFrom, file)
  return module.exports
}

function requireFrom(name) {
  return name.startsWith('./') ? load(name.slice(2)) : ofNode(name)
}

function scriptOf(filename) {
  const text = `(function(module,exports,require,__filename){${readFileSync(filename, 'utf8')}\n})`
  const script = new Script(text, { filename, cachedData: codeOf(filename) })
  scripts.set(filename, script)
  return script
}

function codeOf(filename) {
  try {
    return readFileSync(codeFile(filename))
  } catch {
    return undefined
  }
}

export function codeFile(filename) {
  return `${filename}.code`
}
