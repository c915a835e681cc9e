// example: the command `seat`. Status of the figures: invented data, hand arithmetic
import { describe, expect, it } from 'vitest'
import { outputOf } from '../docs/example-output.ts'
import { answerOf, figureOf } from './answer-of.ts'
import { ran } from './run.ts'

const SEAT = [
  'seat',
  '--thread',
  'M12x1.5',
  '--thread-length',
  '15.6 ± 0.2 mm',
  '--thread-depth',
  '15.0 ± 0.25 mm',
  '--stack',
  '1.2 ± 0.1 mm'
]

describe('a part on its terminal', () => {
  it('leaves 0.60 mm to feel for without it, at worst 1.05', async () => {
    const { results } = await answerOf(...SEAT)
    expect(results['feel-gap']).toMatchObject({
      value: expect.closeTo(0.6, 9),
      low: expect.closeTo(0.15, 9),
      high: expect.closeTo(1.05, 9)
    })
    // 15.6 − 1.2 on the part, 15.0 in the hole.
    expect(results['engagement']!.value).toBeCloseTo(14.4, 9)
  })

  it('names the least stack first, rounded to the careful side, and draws the seat', async () => {
    const { out } = await outputOf(SEAT)
    expect(out).toContain('first: never less than 1.05 mm (0.0414 in) under the shoulder')
    expect(out).toContain('╪ threads engaged')
  })

  it('a thread that jams is drawn as such', async () => {
    const { out } = await outputOf([
      'seat',
      '--thread',
      'M12x1.5',
      '--thread-length',
      '15.6 mm',
      '--thread-depth',
      '11 mm',
      '--stack',
      '1.2 mm'
    ])
    expect(out).toContain('X thread of the part with no thread to go into')
  })
})

it('needs no stack where the shoulder lands by itself', async () => {
  const { out } = await outputOf(['seat', '--thread', 'M12', '--thread-length', '10 mm', '--thread-depth', '12 mm', '--stack', '1 mm'])
  expect(out.replace(/\s+/g, ' ')).toMatch(
    /first: before the thread runs out the shoulder lands without any stack, with 2.00 mm .*the floor is not known/
  )
})

// 10 − 20 + 0 = −10: the thread ends far above the face.
it.each([
  ['20 mm', 1],
  ['8.3 mm', 1],
  ['8.2 mm', 0]
])('under %s of stack a thread of 10 mm ends with %d', async (stack, exit) => {
  const words = ['seat', '--thread', 'M12', '--thread-length', '10 mm', '--thread-depth', '12 mm', '--overall', '12 mm']
  expect((await answerOf(...words, '--floor-depth', '16 mm', '--stack', stack)).exit).toBe(exit)
})

it.each([
  [['--crush', '1.5 mm'], 'a stack that loses more than it has'],
  [['--overall', '9 mm', '--floor-depth', '16 mm'], 'a part that ends before its thread does'],
  [['--overall', '11 mm', '--floor-depth', '11.9 mm'], 'a floor above the end of the full thread']
])('%j: what cannot be is refused', async (more, says) => {
  const words = ['seat', '--thread', 'M12', '--thread-length', '10 mm', '--thread-depth', '12 mm', '--stack', '1 mm', ...more]
  const { exit, err } = await ran(words)
  expect(exit).toBe(2)
  expect(err).toContain(says)
})

describe('several washers and a countersink', () => {
  const words = [...SEAT.slice(0, -1), '1.2 mm,0.8 ± 0.05 mm,0.5 mm', '--mouth', '0.9 mm', '--crush', '0.1 mm']

  // 15.6 − 2.5 + 0.1 − 0.9 = 12.3; the greatest stack for 10: 15.6 + 0.1 − 0.9 − 10 = 4.8.
  it('take from the engagement', async () => {
    const answer = await answerOf(...words, '--need', '10 mm')
    expect(figureOf(answer, 'engagement')).toBeCloseTo(12.3, 9)
    expect(figureOf(answer, 'greatest-stack')).toBeCloseTo(4.8, 9)
    expect(answer.findings.find(({ rule }) => rule === 'seat/stack-too-thick')!.verdict).toBe('pass')
  })

  it('and fail where too little is left', async () => {
    expect(await answerOf(...words, '--need', '12.5 mm')).toMatchObject({ exit: 1 })
  })
})

describe('a connector', () => {
  it.each([
    ['80°', '60°', 0],
    ['80°', '40°', 1]
  ])('that should point to %s, with %s to turn, ends with %d', async (want, turn, exit) => {
    expect((await answerOf(...SEAT, '--clock-now', '30°', '--clock-want', want, '--torque-turn', turn)).exit).toBe(exit)
  })

  // 20° back are 20/360 of 1.5 mm: 0.083 more, or 1.417 less of the 2.15 at the thinnest, of which the run-out needs none.
  it('with floor or neck unknown is pointed by a thinner stack only where the least stack allows it', async () => {
    const stack = ['--stack', '2.2 ± 0.05 mm', '--crush', '0.05 mm', '--mouth', '1.2 mm']
    const part = ['seat', '--thread', 'M14x1.5', '--thread-length', '12 mm', '--thread-depth', '13 mm', ...stack]
    const turns = ['--clock-now', '30°', '--clock-want', '10°', '--torque-turn', '25°']
    const change = async (...more: string[]) =>
      (await answerOf(...part, ...turns, ...more)).findings.find(({ rule }) => rule === 'seat/connector-misclocked')?.change
    const floor = ['--overall', '14 mm', '--floor-depth', '16 mm']
    const wide = ['--undercut', '2 mm']
    expect(await change(...wide)).toMatch(/1\.42 mm less where the least stack allows it \(not known: the floor, the width of the neck\),/)
    expect(await change(...floor, ...wide)).toContain('(not known: the width of the neck)')
    expect(await change(...floor, ...wide, '--neck', '12 mm')).toContain('or 1.42 mm less, lets it point there')
  })

  it('with a part of its angles is refused', async () => {
    expect((await answerOf(...SEAT, '--clock-now', '30°')).exit).toBe(2)
  })
})

it('takes a unified thread', async () => {
  const answer = await answerOf(
    'seat',
    '--thread',
    '3/8-24 UNF',
    '--thread-length',
    '0.5 in',
    '--thread-depth',
    '0.5 in',
    '--stack',
    '1/24 in'
  )
  expect(figureOf(answer, 'turns-to-shoulder')).toBeCloseTo(11, 9)
})

it('a mouth above the face is refused', async () => {
  const { exit, err } = await ran([...SEAT, '--stack', '1 mm', '--mouth', '-1 mm'])
  expect(exit).toBe(2)
  expect(err).toContain('--mouth: error: found "-1 mm"; accepted: 0 mm and more')
})

describe('a plain length under the shoulder', () => {
  const asking = (need: string, ...undercut: string[]) => answerOf('seat', ...BARE, '--stack', '1 mm', '--need', need, ...undercut)
  const plain = (...undercut: string[]) => asking('7 mm', ...undercut)
  const BARE = ['--thread', 'M12x1.5', '--thread-length', '12 mm', '--thread-depth', '16 mm', '--mouth', '0 mm', '--crush', '0 mm']
  const verdictIn = (answer: Awaited<ReturnType<typeof plain>>) =>
    answer.findings.find(({ rule }) => rule === 'seat/stack-too-thick')?.verdict

  it('is off the engagement; left out, it stands with what was assumed', async () => {
    // 12 − 1 = 11 mm engaged; behind a regular undercut of 5.25 mm, 12 − 5.25 = 6.75 mm, less than the 7 mm wanted.
    const [untold, told] = [await plain(), await plain('--undercut', '5.25 mm')]
    expect(figureOf(untold, 'engagement')).toBeCloseTo(11, 9)
    expect(untold.inputs['undercut']).toMatchObject({ value: 0, assumed: 'default: threaded up to the shoulder' })
    expect(figureOf(told, 'engagement')).toBeCloseTo(6.75, 9)
    expect([verdictIn(untold), verdictIn(told)]).toEqual(['caution', 'fail'])
    expect(untold.findings.find(({ rule }) => rule === 'seat/stack-too-thick')).toMatchObject({
      says: expect.stringMatching(/behind a regular undercut of 5\.25 mm \(DIN 76-1, memory\) the margin is -0\.25 mm$/)
    })
    expect(told.cautions.join()).not.toContain('threaded up to its shoulder')
  })

  it('of a unified thread is told as of a metric one, in figures of the shop', async () => {
    // 3/8-24: 3.5 · 25.4/24 = 3.704 mm; 12 − 3.704 − 9.46 = −1.164 mm.
    const words = BARE.map(word => (word === 'M12x1.5' ? '3/8-24 UNF' : word))
    const answer = await answerOf('seat', ...words, '--stack', '1 mm', '--need', '9.46 mm')
    expect(answer.findings.find(({ rule }) => rule === 'seat/stack-too-thick')?.says).toMatch(
      /behind a regular undercut of 3\.70 mm, as for a metric thread \(DIN 76-1, memory\), the margin is -1\.16 mm$/
    )
  })

  // 12 − 5.25 − 6.7 = 0.05 mm are left; told as none, nothing is doubted.
  it('left out, it is a pass where a regular one would leave enough, or where it is told', async () => {
    expect(verdictIn(await asking('6.7 mm'))).toBe('pass')
    expect(verdictIn(await plain('--undercut', '0 mm'))).toBe('pass')
  })

  // 5.5 − 1 = 4.5 mm engaged; behind 5.25 mm a quarter of one, less than the turn of 1.5 mm.
  it('left out, a short thread may not reach in at all', async () => {
    const short = await answerOf('seat', ...BARE.map(word => (word === '12 mm' ? '5.5 mm' : word)), '--stack', '1 mm')
    expect(short.findings.find(({ rule }) => rule === 'seat/thread-not-engaged')).toMatchObject({
      verdict: 'caution',
      says: expect.stringContaining('behind a regular undercut of 5.25 mm')
    })
  })

  it('as long as its thread is refused', async () => {
    expect(await plain('--undercut', '12 mm')).toMatchObject({
      exit: 2,
      errors: [{ found: 'a part that is plain down to where its thread ends' }]
    })
  })
})

// M12x1.5: D1 = 12 − 1.0825 · 1.5 = 10.376 mm; a shank as wide as the thread, 0.8 ± 0.05 mm long, on a terminal of 1.0 ± 0.05 mm.
describe('a wide neck', () => {
  const asking = ['seat', '--thread', 'M12x1.5', '--thread-length', '12 mm', '--thread-depth', '16 mm', '--overall', '14 mm']
  const with16 = [...asking, '--floor-depth', '19 mm', '--stack', '1 ± 0.05 mm', '--crush', '0 mm', '--undercut', '0.8 ± 0.05 mm']
  const judged = async (...more: string[]) => {
    const answer = await answerOf(...with16, ...more)
    return { ...answer, bare: answer.findings.find(({ rule }) => rule === 'seat/jams-without-terminal') }
  }

  it('stands on the rim without its terminal, the whole 0.85 mm of its length', async () => {
    const { bare, results, exit } = await judged('--neck', '12 mm')
    expect([bare?.verdict, exit]).toEqual(['caution', 0])
    expect(bare?.value).toBeCloseTo(-0.85, 9)
    expect(results['feel-gap']).toMatchObject({ value: expect.closeTo(0.8, 9), high: expect.closeTo(0.85, 9) })
    expect(results['least-stack']).toMatchObject({ value: expect.closeTo(0.8, 9), high: expect.closeTo(0.85, 9) })
  })

  // 12 − 16 + 0 of the run-out, 14 − 19 of the floor: no stack is needed, and nothing is to feel.
  it('of no length is none, however wide', async () => {
    const { findings, results } = await answerOf(...with16.slice(0, -1), '0 mm', '--neck', '12 mm')
    expect(findings.find(({ rule }) => rule === 'seat/jams-without-terminal')?.verdict).toBe('pass')
    expect(results['least-stack']?.value).toBeCloseTo(-4, 9)
    expect(results['feel-gap']?.value).toBe(0)
    expect(results['rim.without-stack']).toBeUndefined()
  })

  it('that the drill lets through is none', async () => {
    expect((await judged('--neck', '10.45 mm', '--drill', '10.5 mm')).bare?.verdict).toBe('pass')
    expect((await judged('--neck', '10.45 mm')).bare?.verdict).toBe('caution')
  })

  it('of a width that nobody told is no pass, and is asked for', async () => {
    const { bare } = await judged()
    expect(bare?.verdict).toBe('caution')
    expect(bare?.says).toContain('--neck is not given, and it may be as wide as the thread: without the stack a neck of 12.00 mm')
    expect((await outputOf(with16)).out.replace(/\s+/g, ' ')).toContain('the width of the neck is not known')
  })

  it('in a hole as wide as the thread is refused at the drill', async () => {
    const { exit, err } = await ran([...with16, '--neck', '12 mm', '--drill', '12 mm'])
    expect(exit).toBe(2)
    expect(err).toContain('--drill: error: found a drill of 12 mm, which leaves no thread M12x1.5')
    expect((await judged('--neck', '12 mm', '--drill', '11.9 mm')).exit).toBe(0)
  })

  it('longer than its stack is refused', async () => {
    // 1.2 + 0.05 − 0.95, in no mouth.
    const { exit, err } = await ran([...with16.slice(0, -1), '1.2 ± 0.05 mm', '--neck', '12 mm'])
    expect(exit).toBe(2)
    expect(err).toContain('--neck: error: found a neck of 12.00 mm in a hole 10.38 mm wide: it stands on the rim, 0.30 mm before')
  })
})
