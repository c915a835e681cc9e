// example: what the sheets of the example jobs hold, and what a job that lacks this or that leaves out
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { BLANK, type Block, readOf, type Sheet, type SheetTable } from '../../../src/report/sheet/sheet.ts'
import { judgedJob } from '../../../src/work/job/judged-job.ts'
import { sheetOf } from '../../../src/work/sheet/sheet.ts'
import { type JobText, jobText } from '../invented-job.ts'

const sheet = (text: JobText = {}) => sheetOf(judgedJob('x.yaml', jobText(text)))
const example = (file: string) => sheetOf(judgedJob(file, readFileSync(file, 'utf8')))
const blocks = ({ sections }: Sheet, id: string): readonly Block[] => sections.find(one => one.id === id)?.blocks ?? []
const tables = (of: Sheet, id: string) => blocks(of, id).filter((block): block is SheetTable => block.kind === 'table')
const text = (cell: SheetTable['rows'][number][number] | undefined) => (cell === undefined ? '' : (readOf(cell)?.text ?? '____'))
const rows = (of: Sheet, id: string) => tables(of, id).flatMap(table => table.rows.map(row => row.map(text)))

const whole = example('examples/gearbox-preheater.yaml')

describe('a whole job', () => {
  it.each(['first', 'before', 'during', 'drawings', 'work', 'after', 'cuts', 'material', 'labels', 'torques', 'mass', 'sources', 'record'])(
    'has the part %s',
    id => {
      expect(blocks(whole, id).length).toBeGreaterThan(0)
    }
  )

  it('no number is lost and none is none', () => {
    expect(JSON.stringify(whole)).not.toMatch(/NaN|Infinity|undefined|\[object/)
    expect(JSON.stringify(whole)).not.toMatch(/\bsafe\b/i)
  })

  it('every row has a cell for every column', () => {
    for (const { blocks: all } of whole.sections)
      for (const block of all) if (block.kind === 'table') for (const row of block.rows) expect(row).toHaveLength(block.columns.length)
  })

  it('leaves room for a pen before, after, in the record and for the signatures', () => {
    for (const id of ['before', 'after', 'record', 'torques'])
      expect(tables(whole, id).some(table => table.rows.some(row => row.includes(BLANK)))).toBe(true)
  })

  it('names the source of everything with its label', () => {
    for (const [, label] of rows(whole, 'sources')) expect(['read', 'read-secondary', 'memory', 'common practice']).toContain(label)
  })

  it('cuts each wire with its slack at both ends', () => {
    // 4.20 m of run and 100 mm at each end
    expect(rows(whole, 'cuts')).toContainEqual(['switched to sump+', '2.5 mm2', '4.20 m', '0.20 m', '4.40 m'])
  })

  it('draws the hole, the seated part and the circuit, and says each in words', () => {
    const drawn = blocks(whole, 'drawings').flatMap(block => (block.kind === 'drawing' ? [block.drawing] : []))
    expect(drawn.map(({ id }) => id)).toEqual(expect.arrayContaining(['hole-1', 'seat-1', 'run-1']))
    for (const { says, shapes } of drawn) {
      expect(says).toMatch(/\d/)
      expect(shapes.length).toBeGreaterThan(10)
    }
  })
})

describe('what fails', () => {
  const failing = example('examples/bad/jams-in-run-out.yaml')

  it('stands on top', () => {
    expect(failing.verdict).toBe('fail')
    const [notices] = blocks(failing, 'first')
    expect(notices?.kind === 'notices' && notices.notices[0]).toMatchObject({
      level: 'fail',
      head: expect.stringContaining('seat/jams-in-run-out')
    })
  })

  it('then the number that scraps the part first, before a long list of doubts', () => {
    const first = blocks(sheet({ torque: '{ card: 12 N·m, threads: lubricated }' }), 'first')
    expect(first.map(({ kind }) => kind)).toEqual(['notices', 'numbers', 'notices'])
    const [always, , doubts] = first
    const levels = (block: typeof always) => (block?.kind === 'notices' ? block.notices.map(({ level, head }) => [level, head !== '']) : [])
    expect(levels(always)).not.toContainEqual(['caution', true])
    expect(new Set(levels(doubts).map(String))).toEqual(new Set(['caution,true']))
  })
})

describe('what is not there', () => {
  it('a job without a circuit has no wires, readings of volts or diagram', () => {
    expect(blocks(sheet(), 'cuts')).toEqual([])
    expect(blocks(sheet(), 'drawings').some(block => block.kind === 'drawing' && block.drawing.id.startsWith('run'))).toBe(false)
  })

  it('what nobody gave and a question hangs on is asked for first', () => {
    const [missing] = tables(sheet({ threadLength: null }), 'before')
    expect(missing?.caption).toContain('Not given yet')
    expect(missing?.rows.map(row => text(row[0]))).toContainEqual(expect.stringContaining('thread-length is not given'))
  })

  it('what was done is left for a pen beside what was planned', () => {
    const entries = rows(sheet(), 'record')
    expect(entries.find(([what]) => what === 'hole elbow, as done')).toEqual(['hole elbow, as done', '____'])
    expect(entries.find(([what]) => what === 'hole elbow, planned')?.[1]).toMatch(/^to be opened to 10.20 mm/)
    // No figure of the plan stands in a line that says what was done.
    for (const [what, entry] of entries) if (!/planned|^work$/.test(what!)) expect(entry).not.toMatch(/\d mm|N·m/)
  })

  it('a line that the job leaves empty is left for a pen', () => {
    const signed = tables(sheet(), 'record').at(-1)!
    expect(signed.rows.map(row => row[1])).toEqual([BLANK, BLANK, 'on owner'])
  })
})

it('the drawn circuit is on, however its switches are drawn', () => {
  const drawn = (state: string) =>
    sheet({
      circuit: `{ source: { bus: 24 V, ground: frame }, runs: [{ from: bus, to: p, wire: { size: 1.5 mm2, length: 2 m, ambient: 20 °C, insulation: 105 °C }, through: [{ fuse: F1, rating: 5 A, style: blade }, { switch: S1, rating: 16 A${state} }] }, { from: back, to: frame, bond: 2 mohm }], loads: [{ heater: elbow, from: p, to: back }] }`
    })
  const [open, closed] = [blocks(drawn(', state: open'), 'drawings'), blocks(drawn(''), 'drawings')]
  expect(open).toEqual(closed)
  // 45 W at 24 V are 12.8 ohm, some milliohms beside it.
  expect(JSON.stringify(open)).toMatch(/↓ 1\.8\d A, 4\d\.\d+ W/)
})

it('the mass record has what the job counts with mass, arm and moment, and no blank for it', () => {
  // 58 g at 1.86 m are 0.108 kg·m.
  const [part, wire, ...others] = rows(whole, 'mass')
  expect(part).toEqual(['preheater', '58 g', '1.86 m', '0.108 kg·m', 'in'])
  expect(wire?.slice(0, 3)).toEqual(['wire and switch', '350 g', '2.9 m'])
  expect(others[0]).toEqual(['metal drilled out', 'left out: grams', '', '', 'out'])
})
