// property: what a call of the built program loads, read off the list that the build writes
import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { COMMANDS } from '../../src/commands/list.ts'

interface Piece {
  readonly inputs: readonly string[]
  readonly late: readonly string[]
}

const LIST = 'dist/pieces.json'
if (!existsSync(LIST)) throw new Error(`${LIST} is not there: npm run build`)
const pieces = JSON.parse(readFileSync(LIST, 'utf8')) as { readonly [name: string]: Piece }

/** Files of ours and of packages that stand in these built files. */
function loadedWith(...names: readonly string[]): readonly string[] {
  return names.flatMap(name => {
    const piece = pieces[name]
    if (piece === undefined) throw new Error(`${name} is no built file of its own: build again, or import it late`)
    return piece.inputs
  })
}

/** Those whose work can be asked for by itself. */
const works = await Promise.all(COMMANDS.map(async ({ name, load }) => ({ name, work: (await load()).run })))
const QUICK = works.filter(({ work }) => 'quick' in work).map(({ name }) => name)

const jobs = /node_modules\/yaml\/|^src\/job\//
const drawing = /node_modules\/(cli-table3|chalk|wrap-ansi)\//
const solving = /node_modules\/(ml-matrix|ml-levenberg-marquardt|odex)\//

it('the words of all commands come without the work of any', () => {
  const files = loadedWith('main.cjs')
  expect(files).toContain('src/commands/torque.ts')
  expect(files.filter(file => /\.run\.ts$|^src\/(trade\/(?!practice-names)|fitting\/|rules\/|work\/|report\/)/.test(file))).toEqual([])
  expect(files.filter(file => jobs.test(file) || drawing.test(file) || solving.test(file))).toEqual([])
})

it('every command is a file of its own', () => {
  expect(pieces['main.cjs']!.late).toEqual(expect.arrayContaining(COMMANDS.map(({ name }) => `${name}.run.cjs`)))
})

describe.each(QUICK)('%s', name => {
  const work = `${name}.run.cjs`

  it('with --json loads no file of jobs, nothing that draws and no solver', () => {
    const files = loadedWith('main.cjs', work)
    expect(files).toContain(`src/commands/${name}.run.ts`)
    expect(files).toContain('src/report/json.ts')
    expect(files.filter(file => jobs.test(file) || drawing.test(file) || solving.test(file))).toEqual([])
  })

  it('with a table loads no file of jobs', () => {
    expect(pieces[work]!.late).toContain('page.cjs')
    const files = loadedWith('main.cjs', work, 'page.cjs')
    expect(files.some(file => drawing.test(file))).toBe(true)
    expect(files.filter(file => jobs.test(file))).toEqual([])
  })
})
