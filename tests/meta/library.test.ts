// property: the pure rooms, imported by another program from the package as it is given away, with their types
import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { boundsOf } from '../../src/formula/bounds.ts'
import { Given } from '../../src/formula/given.ts'
import { parseQuantity } from '../../src/quantity/parse-quantity.ts'
import { preloadN } from '../../src/trade/joint/preload.ts'
import { readThread } from '../../src/trade/thread/designation.ts'

const folder = mkdtempSync(join(tmpdir(), 'fettle-library-'))
const at = join(folder, 'node_modules', 'fettle')
const run = (command: string, ...words: readonly string[]) =>
  execFileSync(command, words, { encoding: 'utf8', cwd: folder, stdio: ['ignore', 'pipe', 'pipe'] })

/** What another program would write, and what it should be answered. */
const PROGRAM = `
import { boundsOf } from 'fettle/formula/bounds'
import { Given } from 'fettle/formula/given'
import { OutsideRange } from 'fettle/formula/outside-range'
import { withWorking } from 'fettle/formula/working'
import { parseQuantity } from 'fettle/quantity/parse-quantity'
import { preloadN } from 'fettle/trade/joint/preload'
import { readThread } from 'fettle/trade/thread/designation'

const tree = { torqueNm: new Given(9, { low: 8.5, high: 9.5 }), armMm: 1.92 }
const { value, working } = withWorking(() => preloadN({ torqueNm: 9, armMm: 1.92 }))
const refused = (() => {
  try {
    return preloadN({ torqueNm: -1, armMm: 1.92 })
  } catch (error) {
    return error instanceof OutsideRange
  }
})()
const answer = {
  thread: readThread('M12x1.5'),
  torque: parseQuantity('torque', '155 in-lb ± 5 %'),
  preload: boundsOf(tree, (x: { readonly torqueNm: number; readonly armMm: number }) => preloadN(x)),
  value,
  lines: working.length,
  refused
}
`

beforeAll(() => {
  execFileSync(process.execPath, ['esbuild.library.js'])
  const packed = execFileSync('npm', ['pack', '--ignore-scripts', '--silent', '--pack-destination', folder], { encoding: 'utf8' }).trim()
  mkdirSync(at, { recursive: true })
  run('tar', '-xzf', join(folder, packed), '-C', at, '--strip-components=1')
})

it('gives what the rooms give, from one place each', () => {
  writeFileSync(join(folder, 'program.mjs'), `${PROGRAM.replaceAll(/\(x: \{.*?\}\)/g, 'x')}\nprocess.stdout.write(JSON.stringify(answer))`)
  const tree = { torqueNm: new Given(9, { low: 8.5, high: 9.5 }), armMm: 1.92 }
  const expected = {
    thread: readThread('M12x1.5'),
    torque: parseQuantity('torque', '155 in-lb ± 5 %'),
    preload: boundsOf(tree, x => preloadN(x)),
    value: preloadN({ torqueNm: 9, armMm: 1.92 }),
    lines: 1,
    refused: true
  }
  expect(JSON.parse(run(process.execPath, 'program.mjs'))).toEqual(JSON.parse(JSON.stringify(expected)))
})

it('the program of the handbook runs as it stands', () => {
  const [, program] = /```js\n(.*?)```/s.exec(readFileSync('docs/library.md', 'utf8'))!
  writeFileSync(join(folder, 'handbook.mjs'), program!)
  expect(run(process.execPath, 'handbook.mjs')).toMatch(/^\d+\S* \d+\S* \d+\S*\n1000·T\/a .*\S\n$/)
})

const TYPES = { strict: true, noEmit: true, module: 'NodeNext', target: 'ES2023', lib: ['ES2023'], types: [] }

describe('types', () => {
  const checked = (text: string) => {
    writeFileSync(join(folder, 'program.mts'), text)
    writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify({ compilerOptions: TYPES, files: ['program.mts'] }))
    return run(process.execPath, resolve('node_modules/typescript/bin/tsc'), '-p', folder)
  }

  it('stand by themselves: nothing else needs to be installed', () => {
    expect(checked(`${PROGRAM}\nexport const newton: number = answer.preload.high`)).toBe('')
  })

  it('refuse a name without its unit', () => {
    expect(() =>
      checked("import { preloadN } from 'fettle/trade/joint/preload'\npreloadN({ torque: 9, armMm: 1.92 })\nexport {}")
    ).toThrow()
  })
})

it('every file has its types, and asks for its neighbours alone', () => {
  const files = readdirSync(join(at, 'dist/lib'), { recursive: true, encoding: 'utf8' })
  const code = files.filter(file => file.endsWith('.js') && !file.startsWith('library'))
  expect(code.length).toBeGreaterThan(200)
  expect(code.filter(file => !files.includes(file.replace(/\.js$/, '.d.ts')))).toEqual([])
  const asked = files
    .filter(file => /\.js$|\.d\.ts$/.test(file))
    .flatMap(file => importsOf(readFileSync(join(at, 'dist/lib', file), 'utf8')))
  expect(asked.filter(path => !/^\.{1,2}\/.*\.js$/.test(path))).toEqual([])
})

function importsOf(text: string): readonly string[] {
  return [...text.matchAll(/^(?:import|export)[^'"\n]*? from ["']([^"']+)["'];?$/gm)].map(([, path]) => path!)
}
