// example: exit codes and streams of prove, and a page that keeps to its width
import { describe, expect, it } from 'vitest'
import { outputOf } from '../docs/example-output.ts'

const FILE = 'examples/gearbox-preheater.yaml'
const prove = (more: readonly string[] = [], columns = 80) => outputOf(['prove', FILE, ...more.flatMap(one => ['--reading', one])], columns)
const GOOD = ['bus TO frame=27.05 V', 'sump+ TO sump-=26.86 V', 'bus TO panel=2.80 A']

describe('exit codes', () => {
  it('0 without readings, and with readings in their bands', async () => {
    expect((await prove()).exit).toBe(0)
    expect((await prove(GOOD)).exit).toBe(0)
  })

  it('1 with one out of its band', async () => {
    expect((await prove(['bus TO frame=27.05 V', 'sump+ TO sump-=24.9 V'])).exit).toBe(1)
  })

  it('2 for a reading that cannot be read, and for a file that is not there', async () => {
    const wrong = await prove(['sump+ TO smp-=24.9 V', 'nonsense'])
    expect(wrong).toMatchObject({ exit: 2, out: '' })
    expect(wrong.err).toContain('--reading: error: found "smp-"')
    expect(wrong.err).toContain('did you mean sump-?')
    expect(wrong.err).toContain('nonsense')
    expect(await outputOf(['prove', 'nowhere.yaml', '--json'])).toMatchObject({ exit: 2 })
  })

  it('0 for a job that has no circuit, and 1 with --strict', async () => {
    expect((await outputOf(['prove', 'examples/hydraulic-tank-sensor.yaml'])).exit).toBe(0)
    expect((await outputOf(['prove', 'examples/hydraulic-tank-sensor.yaml', '--strict'])).exit).toBe(1)
  })
})

it.each([60, 160])('no line is wider than %i columns', async columns => {
  for (const readings of [[], GOOD, ['bus TO frame=27.05 V', 'sump+ TO sump-=24.9 V', 'bus TO panel=2.60 A']]) {
    const { out } = await prove(readings, columns)
    expect(Math.max(...out.split('\n').map(line => [...line].length))).toBeLessThanOrEqual(columns)
  }
})

it('says the same in the table and in JSON', async () => {
  const readings = ['bus TO frame=27.05 V', 'sump+ TO sump-=24.9 V', 'bus TO panel=2.60 A']
  const document = JSON.parse((await outputOf(['prove', FILE, ...readings.flatMap(one => ['--reading', one]), '--json'])).out)
  const { out } = await prove(readings, 160)
  expect(document.command).toBe('prove')
  expect(out).toContain(document.results.fault.value)
  expect(out).toContain(`${document.tables.expected[0].value.toFixed(2)} V`)
  expect(document.tables.faults.length).toBeGreaterThan(20)
  expect(out).toMatch(/… and \d+ more/)
})
