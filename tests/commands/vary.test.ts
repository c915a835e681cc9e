// example: the words of compare, sweep and solve, and how each ends
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { XmlDocument } from 'libxml2-wasm'
import { afterAll, describe, expect, it } from 'vitest'
import { solve } from '../../src/commands/solve.ts'
import { sweep } from '../../src/commands/sweep.ts'
import { PRACTICE_NAMES } from '../../src/trade/practice-names.ts'
import { HEATER_OHM, OHM_PER_M, WIRED } from '../work/plain-jobs.ts'
import { ran } from './run.ts'

const folder = mkdtempSync(join(tmpdir(), 'fettle-vary-'))
afterAll(() => rmSync(folder, { recursive: true }))
const file = join(folder, 'wired.yaml')
const longer = join(folder, 'longer.yaml')
writeFileSync(file, WIRED)
writeFileSync(longer, WIRED.replace('length: 10 m', 'length: 60 m'))
const LENGTH = ['--field', 'circuit.runs.0.wire.length', '--from', '5 m', '--to', '80 m']

it('know the practices that there are', () => {
  for (const { rows } of [solve, sweep]) expect(rows.practice.of).toEqual(PRACTICE_NAMES)
})

describe('compare', () => {
  it('ends with 0, and strictly with 1 where a verdict got worse', async () => {
    expect((await ran(['compare', file, longer])).exit).toBe(0)
    expect((await ran(['compare', file, longer, '--strict'])).exit).toBe(1)
    expect((await ran(['compare', longer, file, '--strict'])).exit).toBe(0)
  })

  it('JSON has both sides unrounded', async () => {
    const { tables } = JSON.parse((await ran(['compare', file, longer, '--json'])).out)
    const drop = tables.results.find(({ id }: { id: string }) => id === 'circuit.left:drop.drop-percent')
    const share = (m: number) => (100 * m * OHM_PER_M) / (m * OHM_PER_M + HEATER_OHM)
    expect(Math.abs(drop.before - share(10)) + Math.abs(drop.after - share(60))).toBeLessThan(1e-9)
    expect(tables.verdicts[0]).toMatchObject({ rule: 'drop/too-much', before: 'pass', after: 'fail', moved: 'worse' })
  })

  it.each([[[file]], [[file, file, file]], [[file, 'gone.yaml']]])('needs two files that can be read: %j', async files => {
    expect((await ran(['compare', ...files])).exit).toBe(2)
  })
})

describe('sweep', () => {
  const swept = (...more: readonly string[]) => ran(['sweep', file, ...LENGTH, '--steps', '3', ...more])

  it('JSON has a row a point', async () => {
    const { tables } = JSON.parse((await swept('--json')).out)
    expect(tables.sweep.map(({ value }: { value: number }) => value)).toEqual([5, 30, 55, 80])
    expect(tables.sweep[2]['circuit.left:drop.drop-percent']).toBeCloseTo((100 * 55 * OHM_PER_M) / (55 * OHM_PER_M + HEATER_OHM), 9)
    expect(tables.sweep.map(({ fails }: { fails: string }) => fails.includes('drop/too-much'))).toEqual([false, false, true, true])
  })

  it('CSV has the same rows under a heading with units', async () => {
    const rows = (await swept('--format', 'csv')).out.trimEnd().split('\r\n')
    expect(rows[0]).toMatch(/^circuit\.runs\.0\.wire\.length \[m\],verdict,fails,/)
    expect(rows).toHaveLength(5)
    expect(rows[2]).toMatch(/^30,/)
    expect(new Set(rows.map(row => row.replace(/"[^"]*"/g, '').split(',').length)).size).toBe(1)
  })

  it('SVG can be read, and says in words what colour would', async () => {
    const { out } = await swept('--format', 'svg')
    expect(() => XmlDocument.fromString(out)).not.toThrow()
    expect(out).toContain('>FAIL<')
  })

  it('draws the result that is asked for', async () => {
    expect((await swept('--plot', 'circuit.left:drop.drop-percent')).out).toContain('•')
  })

  it('shows the results that are asked for', async () => {
    const { out } = await swept('--results', 'circuit.left:drop.power', '--json')
    expect(Object.keys(JSON.parse(out).tables.sweep[0])).toEqual(['value', 'verdict', 'fails', 'circuit.left:drop.power'])
  })

  it('writes a file, and not over another', async () => {
    const output = join(folder, 'out.csv')
    expect((await swept('--format', 'csv', '-o', output)).exit).toBe(0)
    expect(readFileSync(output, 'utf8')).toContain('wire.length [m]')
    expect((await swept('--format', 'csv', '-o', output)).exit).toBe(2)
    expect((await swept('--format', 'csv', '-o', output, '--force')).exit).toBe(0)
  })
})

describe('words that do not fit the job', () => {
  it.each([
    ['an unknown field', ['--field', 'circuit.runs.0.wire.lenth', '--from', '1 m', '--to', '2 m'], 'circuit.runs.0.wire.length'],
    ['a value of another kind', ['--field', 'circuit.runs.0.wire.length', '--from', '1 V', '--to', '2 m'], '--from'],
    ['the greater value first', ['--field', 'circuit.runs.0.wire.length', '--from', '3 m', '--to', '2 m'], 'the lesser value first'],
    ['too many steps', [...LENGTH, '--steps', '1000000'], '--steps']
  ])('%s', async (_, words, said) => {
    for (const command of [['sweep'], ['solve', '--want', 'least']]) {
      const { exit, err } = await ran([command[0]!, file, ...words, ...command.slice(1)])
      expect(exit).toBe(2)
      expect(err).toContain(said)
    }
  })

  it('an unknown result', async () => {
    const { exit, err } = await ran(['sweep', file, ...LENGTH, '--plot', 'circuit.left:drop.drp'])
    expect(exit).toBe(2)
    expect(err).toContain('did you mean circuit.left:drop.drop?')
  })
})

describe('solve', () => {
  const solved = (...words: readonly string[]) => ran(['solve', file, ...LENGTH, '--only', 'drop/too-much', ...words])

  it('gives the value and one that can be set, to the side that fits', async () => {
    const { exit, out } = await solved('--want', 'greatest', '--json')
    const { results } = JSON.parse(out)
    const longestM = (HEATER_OHM * 3) / 97 / OHM_PER_M
    expect(exit).toBe(0)
    expect(Math.abs(results.solution.value / longestM - 1)).toBeLessThan(1e-8)
    expect(results['solution.rounded'].value).toBe(Math.floor(longestM * 100) / 100)
  })

  it('says when nothing fits, and what stands in the way', async () => {
    const { exit, out } = await ran([
      'solve',
      file,
      ...LENGTH.slice(0, 2),
      '--from',
      '60 m',
      '--to',
      '80 m',
      '--want',
      'greatest',
      '--only',
      'drop/too-much',
      '--json'
    ])
    const { results, findings } = JSON.parse(out)
    expect(exit).toBe(1)
    expect(results.solution.value).toBeNull()
    expect(findings[0].says).toContain('drop/too-much (circuit.left) fails')
  })

  it('strictly, what is no pass does not fit', async () => {
    expect((await ran(['solve', file, ...LENGTH, '--want', 'greatest', '--strict'])).exit).toBe(1)
  })

  it('needs to know which value is wanted', async () => {
    expect((await solved()).exit).not.toBe(0)
  })
})
