// example: the command `hole`. Status of the figures: invented data, hand arithmetic
import { describe, expect, it } from 'vitest'
import { outputOf } from '../docs/example-output.ts'
import { answerOf, figureOf } from './answer-of.ts'
import { ran } from './run.ts'

const found = (diameter: string, depth: string) => ['--found-diameter', diameter, '--found-depth', depth]
const ELBOW = [
  ...['hole', '--thread', 'M12', ...found('9.0 mm', '24.0 ± 0.5 mm'), '--bottom', 'flat', '--metal-below', '6.0 ± 0.6 mm'],
  ...['--keep-clear', '1 mm', '--stop-error', '0.3 mm', '--tap-clear', '0.6 mm', '--need', '11 mm']
]

describe('a cored hole in a coolant elbow', () => {
  it('has its stop, its metal and its gaps', async () => {
    const answer = await answerOf(...ELBOW)
    expect(figureOf(answer, 'tip-depth')).toBeCloseTo(22.2, 9)
    expect(answer.results['metal-left']).toMatchObject({ value: expect.closeTo(7.8, 9), low: expect.closeTo(6.4, 9) })
    // What is kept clear is what is left at the worst end: 1.0 mm.
    expect(answer.results['gap.least']!.low).toBeCloseTo(1, 9)
    expect(answer.results['gap.point']).toEqual({ ...answer.results['gap.least'], name: expect.any(String), symbol: 'g1' })
    // DIN 76-1 at pitch 1.75: 8.3 mm (read-secondary), off 19.136.
    expect([figureOf(answer, 'run-out'), Number(figureOf(answer, 'usable-thread').toFixed(2))]).toEqual([8.3, 10.84])
  })

  it('names the stop first, rounded to the careful side, and draws the hole', async () => {
    const { out } = await outputOf(ELBOW)
    expect(out).toMatch(/^hole {2}M12x1\.75.*\n\nfirst: set the stop to 22\.20 mm \(0\.8740 in\)/)
    expect(out).toMatch(/[░·≡] +[·≡░]/)
    expect(out).toContain('22.20 tip at the stop')
  })

  it('says which taps reach the thread that is wanted', async () => {
    expect((await answerOf(...ELBOW)).cautions.join()).toContain('is reached by second, bottoming')
  })

  it('is turned by hand, tap by tap', async () => {
    const { tables } = await answerOf(...ELBOW)
    expect(tables['hand-tapping']!.map(({ tap, clear }) => [tap, clear])).toEqual([
      ['taper', 4],
      ['second', 3],
      ['bottoming', 1]
    ])
    expect(tables['step-drills']!.map(({ name }) => name)).toEqual(['9.6 mm'])
    // Full diameter 22.2 - 5.1·cot 59° = 19.136, short by 0.3 at the worst, 0.6 kept clear.
    for (const { end } of tables['hand-tapping']!) expect(end).toBeCloseTo(18.236, 3)
  })
})

it('a bottom that nobody named allows at best a caution', async () => {
  const words = [
    'hole',
    '--thread',
    'M12',
    ...found('9 mm', '24 mm'),
    '--metal-below',
    '6 mm',
    '--keep-clear',
    '1 mm',
    '--stop-error',
    '0.3 mm'
  ]
  const [said] = (await answerOf(...words)).findings
  expect(said).toMatchObject({
    rule: 'hole/broken-through',
    verdict: 'caution',
    says: expect.stringContaining('bottom: usual in a cored hole')
  })
  expect(
    (await answerOf(...words, '--rod', '0 mm', '--bottom', 'flat', '--drill', '10.2 mm', '--point', '118°')).findings[0]!.verdict
  ).toBe('pass')
})

it('a large jump is stepped up, counted from the narrowest the hole may be', async () => {
  // 6.0 to 10.2 mm in five: 0.84 mm a step.
  const { tables } = await answerOf('hole', '--thread', 'M12', ...found('6.4 ± 0.4 mm', '24 mm'))
  expect(tables['step-drills']!.map(({ name }) => name)).toEqual(['6.8 mm', '7.7 mm', '8.5 mm', '9.4 mm'])
})

it('a unified thread has its drill by name, and inch steps', async () => {
  const answer = await answerOf('hole', '--thread', '3/8-24', ...found('5.5 mm', '20 mm'))
  expect(answer.inputs['drill']).toMatchObject({ text: 'Q', assumed: 'default: the published tap drill' })
  expect(answer.tables['step-drills']!.every(({ name }) => /\//.test(String(name)))).toBe(true)
  expect(answer.cautions.join()).toContain('next coarser metric pitch')
})

describe('a hole wider than the thread takes', () => {
  const words = ['hole', '--thread', 'M12x1.5', ...found('10.8 mm', '20 mm')]

  it('has no answer, and the ways out', async () => {
    const answer = await answerOf(...words)
    expect(answer).toMatchObject({ exit: 1, findings: [{ rule: 'hole/no-drill-fits', verdict: 'fail' }] })
    expect((await outputOf(words)).out).toContain('→ a wire thread insert for M12x1.5')
  })

  it('does not say what to set the stop to first', async () => {
    expect((await outputOf(words)).out).not.toContain('first: ')
  })

  it('that only may be too wide is a caution', async () => {
    expect(await answerOf('hole', '--thread', 'M12x1.5', ...found('10.6 ± 0.1 mm', '20 mm'))).toMatchObject({
      exit: 0,
      findings: [{ rule: 'hole/no-drill-fits', verdict: 'caution' }]
    })
  })
})

// Drilled point of 8.5 mm at 118°: 4.25 × cot 59° = 2.554 mm; one pitch of 1.5 mm more is 4.054.
it.each([
  ['4 mm', 'caution', 0.05],
  ['4.2 mm', 'fail', -0.15]
])('a front centre of %s: %s', async (centre, verdict, gapMm) => {
  const answer = await answerOf('hole', '--thread', 'M10', ...found('7 mm', '22 mm'), '--taps', `second:4:${centre}`)
  expect(Number(figureOf(answer, 'centre-gap.second').toFixed(2))).toBe(gapMm)
  expect(answer.findings).toMatchObject([
    { rule: 'hole/tap-centre-meets-point', verdict },
    { rule: 'hole/starts-crooked', verdict: 'pass' }
  ])
})

// The stop errs by 0.3 mm: what is kept clear has to be more.
it.each([
  ['0.6 mm', 'pass'],
  ['0.3 mm', 'caution'],
  ['0.2 mm', 'fail']
])('a tap that keeps %s clear: %s', async (clear, verdict) => {
  const words = ELBOW.map((word, i) => (ELBOW[i - 1] === '--tap-clear' ? clear : word))
  const { findings } = await answerOf(...words, '--drill', '10.2 mm', '--point', '118°')
  expect(findings.find(({ rule }) => rule === 'hole/tap-meets-end')?.verdict).toBe(verdict)
})

it('a floor too thin for any wall is told without one', async () => {
  const { exit, findings } = await answerOf(...ELBOW.map(word => (word === '6.0 ± 0.6 mm' ? '0.2 mm' : word)))
  expect(exit).toBe(0)
  expect(findings.find(({ rule }) => rule === 'hole/metal-below-thin')?.verdict).toBe('caution')
})

describe('what a job would fail for', () => {
  const REVIEWED = ['hole', '--thread', 'M12x1.5', ...found('9.5 mm', '20 mm'), '--rod', '0 mm', '--bottom', 'flat', '--point', '118°']
  const verdicts = async (...words: string[]) => Object.fromEntries((await answerOf(...words)).findings.map(one => [one.rule, one.verdict]))

  it('a wall of 0.05 mm, 1.3 − (12 − 9.5)/2, fails, and does not lower the floor', async () => {
    const floor = [...REVIEWED, '--metal-below', '0.1 mm', '--keep-clear', '0.1 mm', '--stop-error', '0 mm']
    expect(await verdicts(...floor, '--wall', '1.3 mm')).toMatchObject({ 'hole/wall-thin': 'fail', 'hole/metal-below-thin': 'fail' })
    expect(await verdicts(...floor, '--wall', '9 mm')).toMatchObject({ 'hole/wall-thin': 'pass', 'hole/metal-below-thin': 'fail' })
  })

  it('a drill outside the limits fails, and its thread is not full', async () => {
    const said = await verdicts(...REVIEWED, '--drill', '11.9 mm', '--need', '5 mm')
    expect(said).toMatchObject({ 'hole/drill-outside-limits': 'fail', 'hole/thread-too-short': 'fail' })
    expect((await answerOf(...REVIEWED, '--drill', '11.9 mm')).cautions.join()).not.toContain('within reach')
    expect(await verdicts(...REVIEWED, '--drill', '10.5 mm')).toMatchObject({ 'hole/drill-outside-limits': 'pass' })
  })

  it('an old hole that may be wider than the drill fails as in a job', async () => {
    const wide = (mm: string) => verdicts('hole', '--thread', 'M12x1.5', ...found(mm, '20 mm'), '--drill', '10.5 mm')
    expect(await wide('10.6 ± 0.1 mm')).toMatchObject({ 'hole/old-hole-too-large': 'fail' })
    // Up to 10.55 of at most 10.676 mm.
    expect(await wide('10.45 ± 0.1 mm')).toMatchObject({ 'hole/old-hole-too-large': 'caution' })
    expect(await wide('10.3 ± 0.1 mm')).not.toHaveProperty('hole/old-hole-too-large')
  })

  it('a hole in which no thread fits fails without a need', async () => {
    const { exit } = await outputOf(['hole', '--thread', 'M12x1.5', ...found('9.5 mm', '6 mm')])
    expect(exit).toBe(1)
    expect(await verdicts('hole', '--thread', 'M12x1.5', ...found('9.5 mm', '6 mm'))).toMatchObject({ 'hole/thread-too-short': 'fail' })
  })
})

describe('a cone whose angle nobody gave', () => {
  const CONE = ['hole', '--thread', 'M12x1.5', ...found('9.5 mm', '20 ± 0.4 mm'), '--rod', '6 mm', '--bottom', 'cone', '--drill', '10.5 mm']
  const stopAt = async (...angle: string[]) => figureOf(await answerOf(...CONE, '--stop-error', '0.2 mm', ...angle), 'tip-depth')

  it('has the stop of the worst angle from 90 to 140°', async () => {
    // By hand, 140°: 20 − 0.4 + 3·cot 70° − 0.5 − 0.2 = 19.992, the point nearest. 90°: 19.6 + 3 + 4.75·(cot 59° − 1) − 0.7 = 20.004, the rim.
    expect(await stopAt('--bottom-angle', '140°')).toBeCloseTo(19.992, 3)
    expect(await stopAt('--bottom-angle', '90°')).toBeCloseTo(20.004, 3)
    expect(await stopAt()).toBeCloseTo(19.992, 3)
  })

  it('never lets the drill deeper than any of these angles would', async () => {
    const careful = await stopAt()
    for (const angle of [90, 100, 118, 130, 140]) expect(careful).toBeLessThanOrEqual(await stopAt('--bottom-angle', `${angle}°`))
  })
})

it.each(['-0.2 mm', '0.1 mm ± 0.2 mm'])('a stop error of %s, meant as ±, has no sign', async stop => {
  const { exit, err } = await ran(['hole', '--thread', 'M12x1.5', ...found('9.5 mm', '20 mm'), '--stop-error', stop])
  expect(exit).toBe(2)
  expect(err).toContain(`--stop-error: error: found "${stop}"; accepted: 0 mm and more`)
})
