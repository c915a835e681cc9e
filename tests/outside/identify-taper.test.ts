// table: tapered pipe threads against other figures of their standards (memory), and what a caliper finds on them
import { describe, expect, it } from 'vitest'
import { identify } from '../../src/trade/thread/identify.ts'
import { candidates as known } from '../../src/trade/thread/identify-candidates.ts'
import { pipeThreads } from '../../src/trade/thread/taper-pipe.ts'
import { pipeNamed } from '../../src/trade/thread/taper-pipe-named.ts'
import { taperRatio } from '../../src/trade/thread/taper-pipe-taper.ts'

const candidates = known()
const pipe = (name: string) => pipeThreads().find(each => each.name === name)!

// ASME B1.20.1: pitch diameter at the small end E0 = D − (0.05 D + 1.1) P; at the hand-tight plane E1 (memory), inches to five decimals.
const NPT = [
  { name: '1/16-27 NPT', pipeIn: 0.3125, tpi: 27, handIn: 0.28118 },
  { name: '1/8-27 NPT', pipeIn: 0.405, tpi: 27, handIn: 0.3736 },
  { name: '1/4-18 NPT', pipeIn: 0.54, tpi: 18, handIn: 0.49163 },
  { name: '3/8-18 NPT', pipeIn: 0.675, tpi: 18, handIn: 0.62701 },
  { name: '1/2-14 NPT', pipeIn: 0.84, tpi: 14, handIn: 0.77843 },
  { name: '3/4-14 NPT', pipeIn: 1.05, tpi: 14, handIn: 0.98887 },
  { name: '1-11.5 NPT', pipeIn: 1.315, tpi: 11.5, handIn: 1.23863 }
]

it.each(NPT)('shipped data: $name by the formula of its standard', ({ name, pipeIn, tpi, handIn }) => {
  const { externalMm, internalMm, pitchMm } = pipe(name)
  const smallIn = pipeIn - (0.05 * pipeIn + 1.1) / tpi
  expect(pitchMm * tpi).toBeCloseTo(25.4, 9)
  expect(Math.abs(externalMm[0] / 25.4 - (smallIn + 0.8 / tpi))).toBeLessThanOrEqual(0.00001)
  expect(externalMm[1] / 25.4).toBeCloseTo(pipeIn, 9)
  expect(Math.abs(internalMm[0] / 25.4 - (smallIn - 0.8 / tpi))).toBeLessThanOrEqual(0.00001)
  expect(Math.abs(internalMm[1] / 25.4 - (handIn - 0.8 / tpi))).toBeLessThanOrEqual(0.00001)
})

// ISO 7-1 has the Whitworth form: minor = major − 2 · 0.640327 P (memory), mm to three decimals.
const ISO_7 = [
  { name: 'R 1/16 (ISO 7)', majorMm: 7.723, tpi: 28, gaugeMm: 4 },
  { name: 'R 1/8 (ISO 7)', majorMm: 9.728, tpi: 28, gaugeMm: 4 },
  { name: 'R 1/4 (ISO 7)', majorMm: 13.157, tpi: 19, gaugeMm: 6 },
  { name: 'R 3/8 (ISO 7)', majorMm: 16.662, tpi: 19, gaugeMm: 6.4 },
  { name: 'R 1/2 (ISO 7)', majorMm: 20.955, tpi: 14, gaugeMm: 8.2 },
  { name: 'R 3/4 (ISO 7)', majorMm: 26.441, tpi: 14, gaugeMm: 9.5 },
  { name: 'R 1 (ISO 7)', majorMm: 33.249, tpi: 11, gaugeMm: 10.4 }
]

it.each(ISO_7)('shipped data: $name by the form of its standard', ({ name, majorMm, tpi, gaugeMm }) => {
  const { externalMm, internalMm, pitchMm } = pipe(name)
  expect(pitchMm * tpi).toBeCloseTo(25.4, 9)
  expect(Math.abs(internalMm[1] - (majorMm - (2 * 0.640327 * 25.4) / tpi))).toBeLessThanOrEqual(0.001)
  expect(externalMm[0] + gaugeMm / 16).toBeCloseTo(majorMm, 9)
  expect(externalMm[1]).toBeGreaterThan(majorMm)
  expect(internalMm[1] - internalMm[0]).toBeCloseTo(gaugeMm / 16, 9)
})

// An M10 sensor boss and a 1/8 pipe boss are the classic mistake (common practice): 10.287 mm is the outside of 1/8 pipe, P = 25.4/27.
describe('a plug of 10.2 mm with 27 threads to the inch', () => {
  const found = { measuredMm: 10.2, side: 'external', pitchMm: 0.941, candidates } as const

  it('tapered 1:16 is refused as parallel and named', () => {
    const result = identify({ ...found, taperRatio: 1 / 16 })
    expect(result.kind).toBe('tapered')
    expect(result.pipes.map(({ thread }) => thread.name)).toEqual(['1/8-27 NPT'])
    if (result.kind === 'tapered') expect(result.says).toMatch(/tapers 1:16.*tapered pipe thread.*1\/8-27 NPT/)
  })

  it('with no taper measured it is no thread of the series, and the pipe thread is named', () => {
    expect(() => identify(found)).toThrow(/no thread of the series.*1\/8-27 NPT/)
  })
})

// R 1/8 is 9.728 mm at its gauge plane and 9.478 at the small end; M10 of class 6g begins at 9.732 or above.
it('a plug of 9.74 mm may be M10, and R 1/8 is warned of', () => {
  const result = identify({ measuredMm: 9.74, side: 'external', candidates })
  expect(result.kind).toBe('parallel')
  if (result.kind !== 'parallel') return
  expect(result.ranked[0]!.candidate.name).toBe('M10x1.5')
  expect(result.cautions.join()).toContain('R 1/8 (ISO 7)')
})

it('two diameters 0.25 mm apart over 4 mm are a taper of 1:16', () => {
  expect(taperRatio({ largeMm: 10.25, smallMm: 10, betweenMm: 4 })).toBeCloseTo(1 / 16, 12)
})

it.each(['1/8-27 NPT', '1/8-27NPTF', '1/8 BSPT', 'R1/8', 'Rc 1/2', 'R 1-1/4'])('%s names a tapered pipe thread', text => {
  expect(pipeNamed(text)).toContain('tapered')
})

it.each(['G1/8', 'Rp 1/2', '1/8 BSPP', '1/4 BSP', '1/8-27 NPSM'])('%s names a parallel pipe thread', text => {
  expect(pipeNamed(text)).toContain('parallel pipe')
})

it.each(['3/8-24 UNF', '#10-32', '1-8', '1/4-20 UNC-2B'])('%s names none', text => {
  expect(pipeNamed(text)).toBeUndefined()
})
