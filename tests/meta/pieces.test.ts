// property: what a call of the built program loads, read off the map that the build writes
import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { COMMANDS } from '../../src/commands/list.ts'

interface Piece {
  readonly imports: readonly { readonly path: string; readonly kind: string; readonly external?: boolean }[]
  readonly inputs: { readonly [file: string]: unknown }
  readonly entryPoint?: string
}

const MAP = 'dist/meta.json'
if (!existsSync(MAP)) throw new Error(`${MAP} is not there: npm run build`)
const { outputs } = JSON.parse(readFileSync(MAP, 'utf8')) as { outputs: { readonly [path: string]: Piece } }

/** Packages and files of ours that are loaded together with these modules. */
function loadedWith(...modules: readonly string[]): readonly string[] {
  const pieces = new Set<string>()
  const add = (path: string): void => {
    if (pieces.has(path) || outputs[path] === undefined) return
    pieces.add(path)
    for (const { path: next, kind } of outputs[path].imports) if (kind === 'import-statement') add(next)
  }
  for (const module of ['src/main.ts', ...modules]) add(pieceOf(module))
  return [...pieces].flatMap(path => Object.keys(outputs[path]!.inputs))
}

function pieceOf(module: string): string {
  const found = Object.entries(outputs).find(([, { entryPoint }]) => entryPoint === module)
  if (found === undefined) throw new Error(`${module} is no piece of its own: build again, or import it late`)
  return found[0]
}

const JOB_COMMANDS = ['new', 'check', 'explain', 'schema']
const QUICK = COMMANDS.map(({ name }) => name).filter(name => !JOB_COMMANDS.includes(name))

const never = /node_modules\/yaml\/|^src\/job\//
const drawing = /node_modules\/(cli-table3|chalk|wrap-ansi)\//

it('the words of all commands come without the work of any', () => {
  const files = loadedWith()
  expect(files).toContain('src/commands/torque.ts')
  expect(
    files.filter(file => /\.run\.ts$|^src\/(trade|fitting|work|report|job)\//.test(file) && file !== 'src/report/fault-text.ts')
  ).toEqual([])
  expect(files.filter(file => never.test(file) || drawing.test(file) || /node_modules\/(mathjs|ml-matrix)\//.test(file))).toEqual([])
})

describe.each(QUICK)('%s', name => {
  const work = `src/commands/${name}.run.ts`

  it('with --json loads no file of jobs and nothing that draws', () => {
    const files = loadedWith(work, 'src/report/json.ts')
    expect(files).toContain(work)
    expect(files.filter(file => never.test(file) || drawing.test(file))).toEqual([])
  })

  it('with a table loads no file of jobs', () => {
    const files = loadedWith(work, 'src/report/page.ts')
    expect(files.some(file => drawing.test(file))).toBe(true)
    expect(files.filter(file => never.test(file))).toEqual([])
  })

  it('loads no solver of networks', () => {
    expect(loadedWith(work).filter(file => /node_modules\/ml-matrix\//.test(file))).toEqual([])
  })
})
