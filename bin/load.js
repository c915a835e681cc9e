// Loads what the build made. Beside a file may stand the code that V8 made of it then: where this is the same V8,
// it need not be made again; where it is another, V8 takes no notice of it. This folder is CommonJS (its package.json),
// which Node starts quicker.
const { readFileSync } = require('node:fs')
const { join } = require('node:path')
const { Script } = require('node:vm')

const loaded = new Map()

/** Every file loaded so far: its path, and the script whose code can be kept. */
const scripts = new Map()

function load(name) {
  if (loaded.has(name)) return loaded.get(name).exports
  const module = { exports: {} }
  loaded.set(name, module)
  const file = join(__dirname, '../dist', name)
  scriptOf(file).runInThisContext()(module, module.exports, requireFrom, file)
  return module.exports
}

function requireFrom(name) {
  return name.startsWith('./') ? load(name) : require(name)
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

function codeFile(filename) {
  return `${filename}.code`
}

module.exports = { codeFile, load, scripts }
