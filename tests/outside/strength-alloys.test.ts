// Table: casting alloys against printed strengths.
import { expect, test } from 'vitest'
import { readCasting } from '../../src/trade/joint/casting.ts'
import { ALLOYS } from './rows/joint-strengths.ts'

const METALS = { ZAMAK: 'zinc', AZ91D: 'magnesium', grey: 'iron' } as const

/** What the rows leave out or leave to their notes. */
const FROM_NOTES: Record<string, { tensileMpa: number; shearMpa: number; label: string }> = {
  // Least strength of ASTM B26 (read-secondary) in place of the typical 276 MPa; shear 0.7 of it (memory).
  'A356.0-T6 sand cast': { tensileMpa: 234, shearMpa: 164, label: 'memory' },
  'A356.0-T6 permanent mould': { tensileMpa: 262, shearMpa: 193, label: 'memory' },
  'grey iron class 25': { tensileMpa: 172, shearMpa: 220, label: 'memory' },
  'grey iron class 30': { tensileMpa: 207, shearMpa: 276, label: 'memory' },
  'grey iron class 35': { tensileMpa: 241, shearMpa: 334, label: 'memory' },
  'grey iron class 40': { tensileMpa: 276, shearMpa: 393, label: 'memory' }
}

test.each(ALLOYS.filter(({ alloy }) => !alloy.startsWith('383')))('$alloy', row => {
  const expected = FROM_NOTES[row.alloy] ?? row
  const read = readCasting(row.alloy)
  if (!read.ok) throw new Error(read.fault.found)
  expect(read.value).toMatchObject({ tensileMpa: expected.tensileMpa, shearMpa: expected.shearMpa })
  expect(read.value.shearSource.label).toBe(expected.label)
  expect(read.value.tensileSource.label).toBe(row.label)
  expect(read.value.metal).toBe(METALS[row.alloy.split(' ')[0] as keyof typeof METALS] ?? 'aluminium')
})

// Yield in tension as printed; of A356.0-T6 sand the least of ASTM B26 (read-secondary), and none of 356.0-T6 permanent mould, whose row says it looks wrong.
test.each(ALLOYS.filter(({ alloy }) => !alloy.startsWith('383')))('$alloy, yield', ({ alloy, yieldMpa }) => {
  const read = readCasting(alloy)
  expect(read.ok && read.value.yieldMpa).toBe(alloy === 'A356.0-T6 sand cast' ? 165 : yieldMpa)
})

test('383.0 has no printed shear strength and is refused in words', () => {
  expect(ALLOYS.find(({ alloy }) => alloy.startsWith('383'))?.shearMpa).toBeNull()
  const read = readCasting('383.0')
  expect(read.ok ? '' : read.fault.found).toContain('no shear strength')
})
