// Table: property classes against printed strengths, and their loads against printed bolt loads.
import { expect, test } from 'vitest'
import { classStrength, readPartClass } from '../../src/trade/joint/part-class.ts'
import { breakingLoadN } from '../../src/trade/joint/strip.ts'
import { BOLT_LOADS } from './rows/joint-bolt-loads.ts'
import { CLASSES } from './rows/joint-strengths.ts'

function strength(name: string, majorMm: number) {
  const read = readPartClass(name)
  if (!read.ok) throw new Error(read.fault.found)
  return { ...classStrength({ partClass: read.value, majorMm }), label: read.value.source.label }
}

test.each(CLASSES)('class $name ($label)', ({ name, tensileMpa, yieldMpa, proofMpa, label }) => {
  const majorMm = name.endsWith('d>16') ? 16.1 : 16
  // Stainless rows print no proof stress: the program takes their 0.2 % yield for it.
  for (const each of name.replace(/ d.*/, '').split(' / '))
    expect(strength(each, majorMm)).toMatchObject({ tensileMpa, yieldMpa, proofMpa: proofMpa ?? yieldMpa, label })
})

// Nominal stress areas, ISO 898-1, mm2: M5, M8 and M24 memory, the others read-secondary.
const AREAS = { M3: 5.03, M4: 8.78, M5: 14.2, M6: 20.1, M8: 36.6, M10: 58, M12: 84.3, M14: 115, M16: 157, M20: 245, M24: 353 } as const

/** The standard prints three figures and does not always round them: one of the last is allowed. */
const lastDigit = (printed: number) => 10 ** (Math.floor(Math.log10(printed)) - 2)

test.each(BOLT_LOADS)('$thread $partClass breaks at $breakingN N ($label)', ({ thread, partClass, breakingN, proofN }) => {
  const { tensileMpa, proofMpa } = strength(partClass, Number(thread.slice(1)))
  const netStressAreaMm2 = AREAS[thread]
  expect(Math.abs(breakingLoadN({ tensileMpa, netStressAreaMm2 }) - breakingN)).toBeLessThanOrEqual(lastDigit(breakingN))
  if (proofN !== null) expect(Math.abs(proofMpa * netStressAreaMm2 - proofN)).toBeLessThanOrEqual(lastDigit(proofN))
})
