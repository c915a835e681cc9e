// example: the command `thread`, both systems; values that are checked stand in tests/outside with their sources
import { describe, expect, it } from 'vitest'
import { outputOf } from '../docs/example-output.ts'
import { answerOf, figureOf } from './answer-of.ts'

describe('a unified thread', () => {
  // Limits of 3/8-24 UNF 2B and 2A in inches, computed step by step by ASME B1.1 (read-secondary).
  it('has its limits, in millimetres', async () => {
    const answer = await answerOf('thread', '3/8-24 UNF')
    const inches = (id: string) => figureOf(answer, id) / 25.4
    expect(['internal.minor.min', 'internal.minor.max', 'internal.pitch-diameter.min', 'internal.pitch-diameter.max'].map(inches)).toEqual(
      [0.33, 0.34, 0.3479, 0.3528].map(one => expect.closeTo(one, 9))
    )
    expect(['external.major.min', 'external.major.max', 'external.pitch-diameter.min', 'external.pitch-diameter.max'].map(inches)).toEqual(
      [0.3667, 0.3739, 0.343, 0.3468].map(one => expect.closeTo(one, 9))
    )
    expect(answer.results['internal.minor.max']).toMatchObject({ unit: 'mm', source: 'asme-b1.1' })
    expect(answer.inputs['class']).toMatchObject({ text: '2B/2A', assumed: expect.stringContaining('usual class 2B') })
  })

  it('shows inches beside millimetres', async () => {
    expect((await outputOf(['thread', '3/8-24 UNF'])).out).toMatch(/hole: minor diameter, least .* 8\.382 mm \(0\.3300 in\)/)
    expect((await outputOf(['thread', 'M12x1.5'])).out).not.toContain(' in)')
  })

  it('takes a class of its own system', async () => {
    expect((await answerOf('thread', '3/8-24', '--class', '3B')).inputs['class']).toMatchObject({ text: '3B', assumed: null })
    expect((await answerOf('thread', '3/8-24 UNF-3B')).inputs['class']!.text).toBe('3B/2A')
    expect((await answerOf('thread', '3/8-24', '--class', '6H')).exit).toBe(2)
  })

  it.each(['#10-32', '.375-24', '1/4-20 UNC-2B', 'No. 8-36'])('%s is read', async text => {
    expect((await answerOf('thread', text)).exit).toBe(0)
  })

  it.each([
    ['#10-33', '#10-32 UNF'],
    ['3/8-25', '3/8-24 UNF'],
    ['M12x1.6', 'M12x1.5'],
    ['M 12 × 1,5', 'M12x1.5'],
    ['12x1.5', 'M12x1.5']
  ])('%s: did you mean %s', async (text, near) => {
    expect(await answerOf('thread', text)).toMatchObject({ exit: 2, errors: [{ near }] })
  })

  it('a pipe thread is refused by its name', async () => {
    expect((await answerOf('thread', '1/8-27 NPT')).errors![0]!.found).toContain('tapered pipe thread')
  })

  it.each(['G1/4', '1/2-14 NPT'])('%s: both systems are named as accepted', async name => {
    const [error] = (await answerOf('thread', name)).errors!
    expect(error).toMatchObject({ accepted: expect.stringMatching(/ISO metric thread as M12.*unified thread as 3\/8-24/) })
  })
})

describe('everything of one thread', () => {
  it.each(['M12x1.5', '3/8-24 UNF', '1/2-28 UNEF', 'M8x1'])('%s has drill, mouth, way back and what it is taken for', async name => {
    const answer = await answerOf('thread', name)
    expect(figureOf(answer, 'tap-drill')).toBeGreaterThan(figureOf(answer, 'minor.basic') - 0.06)
    expect(figureOf(answer, 'tap-drill')).toBeLessThan(figureOf(answer, 'major.basic'))
    expect(figureOf(answer, 'mouth.least')).toBeCloseTo(figureOf(answer, 'major.basic'), 9)
    expect(figureOf(answer, 'insert.hole')).toBeGreaterThan(figureOf(answer, 'major.basic'))
    expect(answer.tables['inserts']!.map(({ diameters }) => diameters)).toEqual([1, 1.5, 2])
    expect(answer.tables['taken-for']!.length).toBeGreaterThan(0)
    expect(answer.cautions.join()).toMatch(/tap drill: .*\((read-secondary|memory|common practice)\)/)
  })

  it.each(['3/8-24 UNF', '1/4-20 UNC', '1/2-28 UNEF', '#10-32 UNF', 'M12x1.5'])(
    '%s: no least pitch diameter lies below the basic',
    async name => {
      const answer = await answerOf('thread', name)
      expect(figureOf(answer, 'internal.pitch-diameter.min')).toBeGreaterThanOrEqual(
        figureOf(answer, 'pitch-diameter.basic') - (name[0] === 'M' ? 0.0006 : 1e-9)
      )
    }
  )

  it('a basic diameter in inches is the one that the standard prints', async () => {
    // ASME B1.1, 3/8-24: 0.3479 in pitch diameter (read-secondary) = 8.83666 mm.
    expect(figureOf(await answerOf('thread', '3/8-24'), 'pitch-diameter.basic')).toBeCloseTo(0.3479 * 25.4, 9)
  })

  it('lists both systems', async () => {
    const names = (await answerOf('thread', '--list')).tables['threads']!.map(({ name }) => name)
    expect(names).toEqual(expect.arrayContaining(['M12x1.5', '3/8-24 UNF', '#0-80 UNF', '1-1/2-18 UNEF']))
  })

  // ISO 965-1 table 2 (read-secondary): M8x1.25 is N above 4 up to 12 mm.
  it.each([
    ['12 mm', 'N'],
    ['14 mm', 'L'],
    ['11..13 mm', 'N to L']
  ])('M8 engaged %s is of group %s', async (length, group) => {
    const { results, cautions } = await answerOf('thread', 'M8', '--engagement', length)
    expect(results['engagement.group']!.value).toBe(group)
    expect(cautions.join()).toContain('above 4 up to 12 mm')
  })

  it('groups of engagement are for metric threads', async () => {
    expect((await answerOf('thread', '3/8-24', '--engagement', '9 mm')).exit).toBe(2)
  })
})

describe('a thread that was measured', () => {
  it('is named, best first, and never silently where a tapered pipe thread measures the same', async () => {
    const { exit, tables, cautions, findings } = await answerOf('thread', '--measured', '9.74 mm', '--pitch', '1.5 mm')
    expect([exit, findings]).toEqual([0, []])
    expect(tables['candidates']![0]).toMatchObject({ name: 'M10x1.5', kind: 'parallel', verdict: 'fits' })
    expect(cautions).toEqual([])
    expect((await answerOf('thread', '--measured', '9.74 mm')).cautions.join()).toContain('R 1/8 (ISO 7)')
  })

  // G 1/4: minor diameter 11.445 to 11.890 mm (ISO 228-1, memory).
  it('a parallel pipe thread has its line, and is the answer where nothing else fits', async () => {
    const { tables } = await answerOf('thread', '--measured', '11.6 mm', '--internal')
    expect(tables['candidates']!.at(-1)).toMatchObject({ name: 'G 1/4 (ISO 228-1)', kind: 'parallel pipe', verdict: 'fits', least: 11.445 })
    const { exit, findings, ...pitched } = await answerOf('thread', '--measured', '11.6 mm', '--internal', '--pitch', '1.337 mm')
    expect([exit, findings]).toEqual([0, []])
    expect(pitched.tables['candidates']).toMatchObject([{ name: 'G 1/4 (ISO 228-1)', kind: 'parallel pipe' }])
    expect(pitched.cautions.join()).toContain('it takes a part with that pipe thread, or an adapter to it')
  })

  it('a hole goes by its minor diameter', async () => {
    const { tables } = await answerOf('thread', '--measured', '8.45 mm', '--internal', '--pitch', '1/24 in')
    expect(tables['candidates']![0]).toMatchObject({ name: '3/8-24 UNF', verdict: 'fits' })
  })

  it('bounds are the error of the reading', async () => {
    const names = async (text: string) => (await answerOf('thread', '--measured', text, '--pitch', '1.5 mm')).tables['candidates']!
    expect((await names('11.6 mm'))[0]).toMatchObject({ verdict: 'fits if worn' })
    expect((await names('11.6 ± 0.15 mm'))[0]).toMatchObject({ name: 'M12x1.5', verdict: 'fits' })
  })

  it.each([
    ['1:16', 'fail', 1],
    ['1:30', 'fail', 1],
    ['1:200', 'pass', 0],
    ['0', 'pass', 0]
  ])('with a taper of %s: %s', async (taper, verdict, exit) => {
    const answer = await answerOf('thread', '--measured', '10.2 mm', '--pitch', '0.94 mm', '--taper', taper)
    expect(answer.findings[0]).toMatchObject({ rule: 'thread/tapered', verdict })
    // 27 threads to the inch are of no parallel series: parallel, this one fits nothing.
    expect(answer.exit).toBe(Math.max(exit, answer.findings.length - 1))
  })

  it('tapered 1:16 it is a pipe thread, and its table says which', async () => {
    const { tables } = await answerOf('thread', '--measured', '10.2 mm', '--pitch', '0.941 mm', '--taper', '1:16')
    expect(tables['candidates']).toMatchObject([{ name: '1/8-27 NPT', kind: 'tapered' }])
  })

  it('nothing that fits has an empty table and fails in words', async () => {
    const answer = await answerOf('thread', '--measured', '120 mm')
    expect(answer).toMatchObject({ exit: 1, tables: { candidates: [] }, findings: [{ rule: 'thread/no-answer', verdict: 'fail' }] })
  })

  it.each([
    [['M12', '--measured', '12 mm'], '--measured beside a designation'],
    [['--pitch', '1 mm'], '--pitch without --measured'],
    [['M12', '--taper', '1:16'], '--taper without --measured'],
    [['--internal'], '--internal without --measured'],
    [['--measured', '12 mm', '--taper', '1:0'], 'ratio to nought'],
    [[], 'nothing']
  ])('%j: %s', async (words, found) => {
    const answer = await answerOf('thread', ...words)
    expect([answer.exit, answer.errors![0]!.found]).toEqual([2, expect.stringContaining(found)])
  })
})
