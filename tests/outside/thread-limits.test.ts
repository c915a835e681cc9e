// table: limits of size by ISO 965. The standard defines them as rounded to 0.001 mm, so they must agree exactly.
import { describe, expect, it } from 'vitest'
import { readThread } from '../../src/trade/thread/designation.ts'
import { threadResults } from '../../src/trade/thread/thread-results.ts'
import { readClass } from '../../src/trade/thread/tolerance-class.ts'
import { ISO_LIMITS } from './rows/iso-limits.ts'

type Row = (typeof ISO_LIMITS)[number]

function spans({ thread: name, toleranceClass: text }: Row) {
  const thread = readThread(name)
  if (!thread.ok) throw new Error(thread.fault.found)
  const toleranceClass = readClass(text, thread.value)
  if (!toleranceClass.ok) throw new Error(toleranceClass.fault.found)
  const { internal, external } = threadResults({ thread: thread.value, toleranceClass: toleranceClass.value })
  return text === '6H' ? { crest: internal.minor, pitch: internal.pitchDiameter } : { crest: external.major, pitch: external.pitchDiameter }
}

const crestOf = (row: Row) => ({ minMm: row.crestMinMm, maxMm: row.crestMaxMm })
const pitchOf = (row: Row) => ({ minMm: row.pitchMinMm, maxMm: row.pitchMaxMm })
const rowsOf = (pattern: RegExp) => ISO_LIMITS.filter(({ kind }) => pattern.test(kind))

describe('published in a chart', () => {
  it.each(rowsOf(/^published$|minor and pitch/))('$thread $toleranceClass, crest and pitch diameter [$source, $label]', row => {
    expect(spans(row)).toEqual({ crest: crestOf(row), pitch: pitchOf(row) })
  })
  it.each(rowsOf(/pitch\); minor from tables/))('$thread $toleranceClass, pitch diameter [$source, $label]', row => {
    expect(spans(row).pitch).toEqual(pitchOf(row))
  })
})

// These were worked out from the same tolerance tables that the program ships, by somebody else's hand.
describe('shipped data: added up by another hand', () => {
  it.each(rowsOf(/^from tables$/))('$thread $toleranceClass, crest and pitch diameter [$source, $label]', row => {
    expect(spans(row)).toEqual({ crest: crestOf(row), pitch: pitchOf(row) })
  })
  it.each(rowsOf(/pitch\); minor from tables/))('$thread $toleranceClass, minor diameter [$source, $label]', row => {
    expect(spans(row).crest).toEqual(crestOf(row))
  })
})

it('checks every row', () => {
  expect([ISO_LIMITS.length, rowsOf(/^published/).length, rowsOf(/^from tables$/).length]).toEqual([126, 41, 85])
})
