// example: unified designations as people write them
import { describe, expect, it } from 'vitest'
import { readUnified } from '../../../src/trade/thread/unified-designation.ts'
import { unifiedThreads } from '../../../src/trade/thread/unified-series.ts'

describe('reads', () => {
  it.each([
    ['3/8-24', '3/8-24 UNF', null],
    ['3/8-24 UNF', '3/8-24 UNF', null],
    ['3/8"-24', '3/8-24 UNF', null],
    ['3/8 in - 24', '3/8-24 UNF', null],
    ['  3/8 – 24  unf ', '3/8-24 UNF', null],
    ['⅜-24', '3/8-24 UNF', null],
    ['.375-24', '3/8-24 UNF', null],
    ['0.375-24 UNF', '3/8-24 UNF', null],
    ['0.3750-24 UNF-2B', '3/8-24 UNF', '2B'],
    ['.312-18', '5/16-18 UNC', null],
    ['#10-32', '#10-32 UNF', null],
    ['10-32', '#10-32 UNF', null],
    ['no 10 - 24 UNC', '#10-24 UNC', null],
    ['.190-32', '#10-32 UNF', null],
    ['0-80', '#0-80 UNF', null],
    ['1-64', '#1-64 UNC', null],
    ['No. 10-32', '#10-32 UNF', null],
    ['size 10-32', '#10-32 UNF', null],
    ['number10-32', '#10-32 UNF', null],
    ['3/8   -   24', '3/8-24 UNF', null],
    ['3/8- 24', '3/8-24 UNF', null],
    ['3/8 -24', '3/8-24 UNF', null],
    ['1-8', '1-8 UNC', null],
    ['1-20 UNEF', '1-20 UNEF', null],
    ['1-1/8-12', '1-1/8-12 UNF', null],
    ['1 1/8-12 UNF', '1-1/8-12 UNF', null],
    ['1⅛-12', '1-1/8-12 UNF', null],
    ['1.125-7', '1-1/8-7 UNC', null],
    ['1/4-20 UNC-2B', '1/4-20 UNC', '2B'],
    ['1/4-20UNC-2B', '1/4-20 UNC', '2B'],
    ['1/4-20 unc 3a', '1/4-20 UNC', '3A'],
    ['1/4-20 UNC-2B/2A', '1/4-20 UNC', '2B/2A'],
    ['1/4 20', '1/4-20 UNC', null],
    ['#8 UNC', '#8-32 UNC', null],
    ['8 UNF', '#8-36 UNF', null],
    ['3/8 UNF', '3/8-24 UNF', null],
    ['3/8-24 NF', '3/8-24 UNF', null],
    ['1/2-13 UNRC-2A', '1/2-13 UNC', '2A']
  ])('%s as %s, class %s', (text, name, classText) => {
    expect(readUnified(text)).toMatchObject({ ok: true, value: { system: 'unified', name, classText } })
  })

  it.each(unifiedThreads())('its own name: $name', thread => {
    expect(readUnified(thread.name)).toEqual({ ok: true, value: thread })
  })
})

describe('refuses, and names the near one', () => {
  it.each([
    ['3/8-20', /no thread with 20 to the inch/, /3\/8-16 UNC, 3\/8-24 UNF or 3\/8-32 UNEF/, '3/8-24 UNF'],
    ['3/8-18', /no thread with 18/, /3\/8-16 UNC/, '3/8-16 UNC'],
    ['10-30', /no thread with 30/, /#10-24 UNC or #10-32 UNF/, '#10-32 UNF'],
    ['1/4-22 UNEF', /no thread with 22/, /1\/4-20 UNC, 1\/4-28 UNF or 1\/4-32 UNEF/, '1/4-32 UNEF'],
    ['1/4-24 UNF', /no thread with 24/, /1\/4-28 UNF/, '1/4-28 UNF'],
    ['3/8-24 UNC', /is no UNC thread: 3\/8-24 is UNF/, /3\/8-16 UNC/, '3/8-24 UNF'],
    ['13/16 UNC', /13\/16-20 is UNEF/, /13\/16-20 UNEF/, '13/16-20 UNEF'],
    ['7/17-20', /no unified size "7\/17"/, /#0.*1-1\/2/, '7/16'],
    ['3/8', /no pitch/, /3\/8-16 UNC, 3\/8-24 UNF or 3\/8-32 UNEF/, undefined],
    ['1 UNC', /two threads/, /#1-64 UNC or 1-8 UNC/, undefined],
    ['3/8-16 BSW', /unknown thread series "BSW"/, /UNC, UNF or UNEF/, undefined],
    ['1/4-20 UNC-4B', /"4B" is no tolerance class/, /1B to 3B/, undefined],
    ['1/4-20 UNC-2B-LH', /left-hand/, /same/, '1/4-20 UNC-2B'],
    ['1/4-20LH', /left-hand/, /same/, '1/4-20'],
    ['1/4-20 - LH', /left-hand/, /same/, '1/4-20'],
    ['0,375-24', /decimal comma/, /decimal point/, '0.375-24'],
    ['1/8-27 NPT', /tapered pipe thread.*neither seats nor seals/, /3\/8-24/, undefined],
    ['G1/8', /parallel pipe thread/, /3\/8-24/, undefined],
    ['M10x1.5', /no thread in "M10x1.5"/, /3\/8-24/, undefined],
    ['', /no thread in ""/, /3\/8-24/, undefined],
    ['3/0-16', /no unified size/, /#0/, undefined],
    ['-3/8-16', /no thread in/, /3\/8-24/, undefined],
    ['3/8-0', /no thread with 0/, /3\/8-16/, expect.anything()],
    [`0,375-24${' UNF'.repeat(9)}`, /decimal comma/, /decimal point/, undefined],
    ['1/4-20LHX', /unknown thread series "LHX"/, /UNC, UNF/, undefined],
    ['9'.repeat(5000), /no thread in/, /3\/8-24/, undefined]
  ])('%s', (text, found, accepted, near) => {
    const read = readUnified(text)
    expect(read).toMatchObject({ ok: false, fault: { found: expect.stringMatching(found), accepted: expect.stringMatching(accepted) } })
    if (!read.ok) expect(read.fault.near).toEqual(near)
  })

  it('what is offered reads', () => {
    for (const text of ['3/8-20', '10-30', '3/8-24 UNC', '13/16 UNC', '1/4-20 UNC-2B-LH', '0,375-24']) {
      const read = readUnified(text)
      expect(read.ok).toBe(false)
      if (!read.ok) expect(readUnified(read.fault.near!)).toMatchObject({ ok: true })
    }
  })
})
