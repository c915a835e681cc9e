// example: what is judged of a rating that was given
import { describe, expect, it } from 'vitest'
import { jsonOf } from './json-of.ts'

const FUSE = 'protect --wire 1.5mm2 --practice road --protector-at 25°C --insulation 105°C --bundle 1 --altitude 0m'
const verdicts = async (words: string) =>
  Object.fromEntries((await jsonOf(`${FUSE} ${words}`)).findings.map(({ rule, verdict }) => [rule, verdict]))

it('judges what a fuse can break at the voltage of the bus', async () => {
  const at = (bus: string) => verdicts(`--current 3A --rating 5A --fault 100A --ambient 20°C ${bus}`)
  expect((await at('--bus 28V'))['protect/interrupting']).toBe('pass')
  expect((await at('--bus 48V'))['protect/interrupting']).toBe('caution')
  expect((await at('--bus "48..60 V"'))['protect/interrupting']).toBe('fail')
  expect((await at('--bus 1000V'))['protect/interrupting']).toBe('fail')
  expect((await at(''))['protect/interrupting']).toBe('caution')
  expect(await verdicts('--current 3A --rating 5A --ambient 20°C --bus 1000V')).toHaveProperty('protect/interrupting', 'fail')
})

it('holds a short against what is printed on the part, where that is given', async () => {
  const at = async (words: string) => (await verdicts(`--current 3A --rating 5A --ambient 20°C ${words}`))['protect/interrupting']
  // ISO 8820-3 (read-secondary): 1000 A at most, at 32 V or 58 V.
  expect(await at('--bus 28V --fault 1200A')).toBe('fail')
  expect(await at('--bus 28V --fault 1200A --breaking-capacity 2000A')).toBe('pass')
  expect(await at('--bus 28V --fault 600A --breaking-capacity 500A')).toBe('fail')
  expect(await at('--bus 28V --fault 1200A --breaking-capacity "1150..1300 A"')).toBe('fail')
  // Its figure goes before; the voltage that such parts are made for is a limit of its own.
  expect(await at('--bus 32V --fault 1200A --breaking-capacity 2000A')).toBe('pass')
  expect(await at('--bus 48V --fault 1200A --breaking-capacity 2000A')).toBe('caution')
  expect(await at('--bus 60V --fault 1200A --breaking-capacity 2000A')).toBe('caution')
  expect(await at('--bus 60V --fault 1200A --breaking-capacity 1000A')).toBe('fail')
  expect(await at('--fault 1200A --breaking-capacity 2000A')).toBe('caution')
  expect(await at('--bus 28V --fault 1200A --style thermal')).toBe('not-judged')
  expect(await at('--bus 28V --fault 1200A --style thermal --breaking-capacity 2000A')).toBe('pass')
})

it('takes a rating for what the part can break', async () => {
  const chosen = (words: string) => jsonOf(`${FUSE} --current 3A --ambient 20°C --bus 28V --fault 1200A ${words}`)
  // Three quarters of 4 A carry the 3 A for good.
  expect((await chosen('--breaking-capacity 2000A')).results.rating!.value).toBe(4)
  expect((await chosen('--breaking-capacity 2000A')).results['breaking-capacity']!.value).toBe(2000)
  expect((await chosen('')).results.rating!.value).toBeNull()
})

it('tells how hot an overload without end makes the wire', async () => {
  const { findings } = await jsonOf(`${FUSE} --current 5.6A --rating 20A --ambient 50°C`)
  const found = findings.find(({ rule }) => rule === 'protect/over-wire')
  // By hand: 25 · 0.85 = 21.25 A at 105 °C in 50 °C; u = (1.35·20/21.25)² · 55/339.5 = 0.26154; (50 + 234.5·u)/(1 − u) = 150.8 °C.
  expect(found).toMatchObject({ verdict: 'caution', says: expect.stringContaining('150.8 °C') })
  expect((await verdicts('--current 3A --rating 5A --ambient 50°C'))['protect/over-wire']).toBe('pass')
})

it('does not pass over a switch above the voltages of its table', async () => {
  const at = (switched: string) => verdicts(`--current 3A --rating 5A --ambient 20°C --bus 48V --switch ${switched}`)
  expect((await at('20A'))['switch/under-rated']).toBe('not-judged')
  expect((await at('5A'))['switch/under-rated']).toBe('fail')
})

it('judges a rating that it chose as one that was given', async () => {
  const at = (words: string) => verdicts(`--current 3A --ambient 20°C ${words}`)
  expect((await at('--bus 48V --fault 400A'))['protect/interrupting']).toBe('caution')
  expect((await at('--bus 48V --rating 4A --fault 400A'))['protect/interrupting']).toBe('caution')
  expect((await at('--bus 24V --fault 400A'))['protect/interrupting']).toBe('pass')
  // 32 V parts and 58 V parts are sold of the same form; of a glass fuse no direct voltage is printed at all.
  expect((await at('--bus 48V'))['protect/interrupting']).toBe('not-judged')
  expect((await at('--style glass --bus 24V'))['protect/interrupting']).toBe('not-judged')
  expect(await at('--bus 24V')).not.toHaveProperty('protect/interrupting')
})

it('takes one rating and not a span of them', async () => {
  const { exit, errors } = await jsonOf(`${FUSE} --current 1A --rating 8..12A`)
  expect(exit).toBe(2)
  expect(errors).toMatchObject([{ found: 'a rating with bounds', accepted: 'the one rating that stands on the part' }])
})

it('takes no part that breaks nothing', async () => {
  const { exit, errors } = await jsonOf(`${FUSE} --current 1A --rating 5A --fault 10A --breaking-capacity 0A`)
  expect(exit).toBe(2)
  expect(errors).toMatchObject([{ found: 'a breaking capacity of nothing', accepted: 'more than 0 A, bounds and all' }])
})

it('tells the same warmth of the same wire whatever the practice, and where that comes from', async () => {
  for (const practice of ['general', 'aircraft']) {
    const { results, cautions } = await jsonOf(
      `protect --wire "AWG 18" --current 1A --rating 10A --style iec-60898 --ambient 30°C --practice ${practice}`
    )
    // By hand: 20 A have 75 K (33 CFR 183.425 table 5); u = (1.45·10/20)² · 75/339.5 = 0.11612; (30 + 234.5·u)/(1 − u) = 64.75 °C.
    expect(results['overload-temperature']!.value).toBeCloseTo(64.75, 2)
    expect(cautions.some(says => says.includes('how warm it gets is reckoned from 33 CFR 183.425 table 5'))).toBe(practice === 'aircraft')
  }
})

describe('the overload of aircraft wire', () => {
  const over = async (words: string) => {
    const { findings } = await jsonOf(`protect --rating "7.5 A" --current "3 A" --wire "AWG 18" --style glass --practice aircraft ${words}`)
    return findings.find(({ rule }: { rule: string }) => rule === 'protect/over-wire')
  }
  const PLACE = '--protector-at "25 °C" --insulation "105 °C" --ambient "62 °C" --altitude "3000 m"'

  // By hand: 20 A in open air at a rise of 75 K is 15.1 A at one of 43 K; 10.1 A (135 % of 7.5 A) makes 81 °C of it.
  // In a bundle of 15 the figure is 6.65 A, and 162 °C.
  // 8 A of a 10 A fuse at 65 °C, by its sheet, and three quarters of that: 6 A; nothing is printed hotter.
  it.each([
    ['7 A', '90 °C', 'fail'],
    ['5 A', '90 °C', 'not-judged']
  ])('%s through a fuse of 10 A at %s', async (current, place, verdict) => {
    const { findings } = await jsonOf(`protect --wire 2.5mm2 --practice road --rating 10A --current "${current}" --protector-at "${place}"`)
    expect(findings.find(({ rule }: { rule: string }) => rule === 'protect/overloaded')).toMatchObject({ verdict })
  })

  it('is no pass where nobody told how many lie together', async () => {
    expect(await over(PLACE)).toMatchObject({ verdict: 'caution', says: expect.stringContaining('bundle 1') })
    expect(await over(`${PLACE} --bundle 1`)).toMatchObject({ verdict: 'pass' })
    expect(await over(`${PLACE} --bundle 15`)).toMatchObject({ verdict: 'fail' })
  })

  it('is let off by the table only for wire of 105 °C, the least that aircraft wire is made for (memory)', async () => {
    const words = '--ambient "57 °C" --bundle 15 --altitude "9000 m"'
    expect(await over(`${words} --insulation "105 °C"`)).toMatchObject({ verdict: 'caution' })
    expect(await over(`${words} --insulation "80 °C"`)).toMatchObject({ verdict: 'fail' })
  })
})

describe('a style without published times', () => {
  const over = async (words: string) => {
    const { findings, results } = await jsonOf(`protect ${words}`)
    expect(results).not.toHaveProperty('overload-temperature')
    return findings.find(({ rule }: { rule: string }) => rule === 'protect/over-wire')
  }
  const BOAT = '--practice boat --wire "1.5 mm2" --current "12 A" --insulation "105 °C" --ambient "30 °C" --bundle 1'

  // By hand: 25 A at a rise of 75 K (33 CFR 183.425 table 5); u = (I/25)² · 75/339.5, and (30 + 234.5·u)/(1 − u) °C.
  it.each([
    ['thermal', '35 A', '25 °C', 'fail', '232.0 °C'],
    ['hydraulic-magnetic', '35 A', '25 °C', 'fail', '232.0 °C'],
    ['blade-mini', '30 A', '25 °C', 'caution', '153.4 °C'],
    ['blade-mini', '15 A', '25 °C', 'caution', 'what it carries for good is not known'],
    // 24 A / 0.76, by the row of -30 °C.
    ['thermal', '24 A', '-20 °C', 'fail', '31.58 A'],
    ['thermal', '24 A', '25 °C', 'caution', '24.00 A']
  ])('%s of %s at %s', async (style, rating, place, verdict, says) => {
    const found = await over(`${BOAT} --style ${style} --rating "${rating}" --protector-at "${place}"`)
    expect(found).toMatchObject({ verdict, says: expect.stringContaining(says) })
  })

  it('is said to be why nobody knows what a short does', async () => {
    const { findings } = await jsonOf(`protect ${BOAT} --style thermal --rating "7.5 A" --fault "60 A" --protector-at "25 °C"`)
    expect(findings.find(({ rule }: { rule: string }) => rule === 'wire/short-circuit')).toMatchObject({
      verdict: 'not-judged',
      says: '7.5 A thermal breaker, manual reset, snap-in: no opening times are published for its style',
      change: "take the maker's curve"
    })
  })

  it('of aircraft wire that lies outside the table is judged by what its rating makes of it', async () => {
    // By hand: 2.27 A at a rise of 5 K; u = (7.5/2.27)² · 5/339.5 = 0.1608; (100 + 234.5·u)/(1 − u) = 164 °C.
    const words = '--practice aircraft --wire "AWG 18" --current "2 A" --insulation "105 °C" --ambient "100 °C" --protector-at "29 °C"'
    expect(await over(`${words} --style thermal --rating "7.5 A" --bundle 30`)).toMatchObject({ verdict: 'fail', limit: 160, unit: '°C' })
  })
})

it('finds a fuse for aircraft wire that the guide allows', async () => {
  // 4 A at 75 % of the rating is 5.33 A; FAA AC 43.13-1B table 11-3 has up to 10 A for AWG 18 (read-secondary).
  const { results } = await jsonOf('protect --current 4A --wire "AWG 18" --practice aircraft')
  expect(results.rating).toMatchObject({ value: 7.5 })
})
