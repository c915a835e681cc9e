// example: what a job has to say before its joint is judged. Status: invented job
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const JOB = `
fettle: 1
job: { title: joint }
parts:
  part:
    kind: plug
    thread: M12x1.5
    thread-length: 12 mm
    undercut: 0 mm
    shoulder: 17 mm
    body: { tensile: 380 MPa, proof: 260 MPa, neck: 12 mm, bore: 0 mm }
    torque: { card: 12 N·m, threads: dry }
tools: { wrench: { range: 5..25 N·m, accuracy: 4 % }, stop-error: 0 mm, tap-clear: 1 mm, taps: [{ name: bottoming, chamfer: 1.5 }] }
holes:
  left:
    takes: part
    casting: { alloy: A380, wall: 6 mm, metal-below: 9 mm }
    found: { diameter: 9.5 mm, depth: 24 mm, rod: 0 mm, bottom: flat }
    drill: { size: 10.5 mm, point: 118° }
    keep-clear: 1 mm
    mouth: 0 mm
    crush: 0 mm
    under-shoulder: [{ what: terminal, thickness: 1 mm, hole: 12.5 mm }]
    friction: { nut-factor: 0.16..0.24 }
`

function judged(change: (text: string) => string = text => text) {
  const job = judgeJob('job.yaml', change(JOB))
  expect(job.errors).toEqual([])
  return job
}

const joint = (job: ReturnType<typeof judged>) => job.findings.filter(({ rule }) => rule.startsWith('joint/'))

/** One that goes between the threads of its hole. */
const necked = (text: string) => text.replace('neck: 12 mm', 'neck: 10 mm')

describe('a whole joint', () => {
  it('is judged, with its results under the names of the quick command', () => {
    const job = judged()
    expect(joint(job).map(({ rule, verdict }) => [rule, verdict])).toEqual([
      ['joint/casting-strips', 'pass'],
      ['joint/part-strips', 'pass'],
      ['joint/body-yields', 'pass'],
      ['joint/outside-band', 'pass'],
      // 88.1 mm² · 380 MPa over 25.75 mm² · 190 MPa a mm are 6.84 mm; 1.5 · 1.2 times that is more than the 11 mm.
      ['joint/engagement-short', 'caution'],
      ['joint/crushes-under-shoulder', 'pass']
    ])
    const value = (id: string) => job.results.find(one => one.id === `holes.left:${id}`)?.value
    // 12 − 1 mm engaged; T/(K·d) = 12/(0.2 · 0.012) = 5000 N; 4·5000/(π(17² − 12.5²)) = 47.96 MPa.
    expect(value('seat.engagement')).toBeCloseTo(11, 9)
    expect(value('joint.preload')).toBeCloseTo(5000, 6)
    expect(value('joint.bearing-pressure')).toBeCloseTo(47.96, 2)
    expect(job.results.find(({ id }) => id === 'holes.left:joint.torque')).toMatchObject({
      low: expect.closeTo(11.52, 9),
      high: expect.closeTo(12.48, 9)
    })
  })

  // M12x1.5 with a regular undercut: 3.5 · 1.5 = 5.25 mm; 12 − 5.25 = 6.75 mm is left of the 11 mm, 4 mm of a shank of 8 mm.
  it.each([
    ['    undercut: 5.25 mm\n', 6.75],
    ['    undercut: 8 mm\n', 4],
    ['    undercut: 1 mm\n', 11],
    ['', 11]
  ])('with %j engages %d mm', (undercut, mm) => {
    const job = judged(text => necked(text).replace('    undercut: 0 mm\n', undercut))
    expect(job.results.find(({ id }) => id === 'holes.left:seat.engagement')?.value).toBeCloseTo(mm, 9)
  })

  it('without a word of the undercut is a caution where the verdict would move, and names the field', () => {
    // It breaks at its neck: π/4 · 10² mm² · 450 MPa over 25.75 mm² · 190 MPa a mm are 7.22 mm, more than the 6.75 of them.
    const strong = (text: string) => necked(text).replace('tensile: 380', 'tensile: 450')
    const short = joint(judged(text => strong(text).replace('    undercut: 0 mm\n', ''))).filter(({ verdict }) => verdict === 'caution')
    const behind = joint(judged(text => strong(text).replace('undercut: 0 mm', 'undercut: 5.25 mm'))).filter(
      ({ margin }) => (margin ?? 0) < 0
    )
    expect(short.map(({ rule }) => rule)).toEqual(['joint/engagement-short'])
    expect(behind.map(({ rule }) => rule)).toEqual(['joint/engagement-short'])
    expect(short[0]!.says).toContain('regular undercut of 5.25 mm')
    expect(short[0]!.assumes).toContainEqual(['parts', 'part', 'undercut'])
  })

  // Strip load a mm: π/1.5 · 11.732 · (0.75 + 0.57735 · (11.732 − 11.216)) mm² · 190 MPa = 4892 N (limits of M12x1.5, ISO 965-1); 33.0 kN over
  // 6.75 mm, 53.8 kN over 11 mm. The pull: 1.04 · 50 N·m / (0.16 · 12 mm) = 27.1 kN, and 1.5 times that 40.6 kN.
  it('what only a typical strength would hold behind a regular undercut is no pass without a word of it', () => {
    const strips = (undercut: string) =>
      joint(judged(text => necked(text).replace('    undercut: 0 mm\n', undercut).replace('card: 12', 'card: 50')))[0]!
    expect(strips('    undercut: 0 mm\n').verdict).toBe('pass')
    expect(strips('    undercut: 5.25 mm\n').verdict).toBe('caution')
    expect(strips('')).toMatchObject({
      verdict: 'caution',
      says: expect.stringMatching(/regular undercut of 5\.25 mm.*less than 1\.5 times/)
    })
    expect(strips('').assumes).toContainEqual(['parts', 'part', 'undercut'])
  })

  it('a short thread behind an undercut that nobody told may be none', () => {
    const judging = (mm: string) =>
      judged(text => text.replace('thread-length: 12 mm\n    undercut: 0 mm', `thread-length: ${mm}`)).findings
    const engaged = (mm: string) => judging(mm).find(({ rule }) => rule === 'seat/thread-not-engaged')
    // 6 − 5.25 = 0.75 mm: less than one turn of 1.5; 7 − 5.25 = 1.75 is one.
    expect(engaged('6 mm')).toMatchObject({ verdict: 'caution', says: expect.stringContaining('the margin is -0.75 mm') })
    expect(engaged('7 mm')?.verdict).toBe('pass')
  })

  // M12x1.5, D1 10.376, drilled 10.5: 12 mm wide stands on the rim. 5 − 1 of terminal: 4 mm; a mouth 1 mm deep is 12.376 across and takes
  // 1 − (12 − 10.376)/2 = 0.188 mm of it. Without the terminal all of it stands out, or all but what the mouth takes.
  it.each([
    ['5 mm', '0 mm', '4.00 mm', '5.00 mm'],
    ['5 mm', '1 mm', '3.81 mm', '4.81 mm'],
    ['1 mm', '0 mm', null, '1.00 mm'],
    ['1.1 mm', '1 mm', null, '0.91 mm']
  ])('a plain length of %s, a mouth of %s, and no word of its width', (undercut, mouth, gap, bare) => {
    const text = (job: string) =>
      job.replace('undercut: 0 mm', `overall: 13 mm\n    undercut: ${undercut}`).replace('mouth: 0 mm', `mouth: ${mouth}`)
    const bodies = [text(JOB).replace('neck: 12 mm, ', ''), text(JOB).replace(/ {4}body: .*\n/, '')]
    for (const body of bodies) {
      const seats = judged(() => body).findings.filter(({ rule }) => /^seat\/(?!stack)/.test(rule))
      expect(seats).toHaveLength(4)
      const unsure = seats.filter(({ rule }) => gap !== null || rule === 'seat/jams-without-terminal')
      for (const { rule, verdict, says, assumes } of unsure) {
        expect(verdict).not.toBe('pass')
        expect(says).toMatch(/parts\.part\.body\.neck is not given/)
        expect(says).toContain(`${rule === 'seat/jams-without-terminal' ? bare : gap} before the shoulder lands`)
        expect(assumes).toContainEqual(['parts', 'part', 'body', 'neck'])
      }
      expect(seats.filter(({ says }) => says.includes('neck'))).toEqual(unsure)
    }
  })

  it('bears on no metal that the mouth took away', () => {
    const pressure = (mouth: string) =>
      judged(text => text.replace('mouth: 0 mm', `mouth: ${mouth}`)).results.find(({ id }) => id.endsWith('bearing-pressure'))
    // D1 10.376: 1 mm deep 12.376 across, inside the 12.5 of the terminal; 1.5 mm deep 13.376: 4·5000/(π(17² − 13.376²)) = 57.83 MPa.
    expect(pressure('1 mm')?.value).toBeCloseTo(47.96, 2)
    expect(pressure('1.5 mm')?.value).toBeCloseTo(57.83, 2)
    expect(pressure('1.5 mm ± 0.2 mm')?.high).toBeGreaterThan(60)
    // 1 ± 0.2 deep 12.376 across, up to 12.776: nominal the terminal's 12.5, 4·5000/(π(17² − 12.776²)) = 50.62 MPa at 5000 N.
    expect(pressure('1 mm ± 0.2 mm')?.value).toBeCloseTo(47.96, 2)
    expect(pressure('1 mm ± 0.2 mm')?.high).toBeGreaterThan(50.62)
  })

  // A bare shoulder stands on the face around its thread, 12 mm, or around a wider mouth: 1.5 mm deep 13.376 across.
  // 4·5000/(π(17² − 12²)) = 43.90 MPa, 4·5000/(π(17² − 13.376²)) = 57.83 MPa.
  it.each([
    ['0 mm', 43.9],
    ['1.5 mm', 57.83]
  ])('a bare shoulder bears around its mouth of %s', (mouth, mpa) => {
    const bare = (text: string) => text.replace(/under-shoulder: .*/, 'under-shoulder: []').replace('mouth: 0 mm', `mouth: ${mouth}`)
    const job = judged(bare)
    expect(job.results.find(({ id }) => id.endsWith('bearing-pressure'))?.value).toBeCloseTo(mpa, 2)
    expect(joint(job).find(({ rule }) => rule === 'joint/crushes-under-shoulder')?.verdict).toBe('pass')
    expect(joint(job).filter(({ says }) => says.includes('hexagon'))).toEqual([])
  })

  it('a layer whose hole nobody told is no better beside one that is told', () => {
    const found = joint(judged(text => text.replace('[{ what: terminal', '[{ what: washer, thickness: 0.5 mm }, { what: terminal')))
    expect(found.find(({ rule }) => rule === 'joint/crushes-under-shoulder')).toMatchObject({
      verdict: 'not-judged',
      change: 'give holes.left.under-shoulder.0.hole'
    })
    const says = found.find(({ rule }) => rule === 'joint/body-yields')?.says
    expect(says).toContain('hangs on what was assumed: holes.left.under-shoulder.0.hole (that of a hexagon')
  })

  it('a strength that the job gives goes before that of the alloy', () => {
    const load = (text: (job: string) => string) => Number(judged(text).results.find(({ id }) => id.endsWith('strip-load.internal'))!.value)
    expect(load(text => text.replace('alloy: A380', 'alloy: A380, shear: 95 MPa')) / load(text => text)).toBeCloseTo(95 / 190, 9)
  })

  it('a class promises its strengths, and what is given goes before them', () => {
    const yields = (body: string) =>
      joint(judged(text => text.replace('{ tensile: 380 MPa, proof: 260 MPa, neck: 12 mm, bore: 0 mm }', body)))[2]!
    expect(yields('{ class: A2-70, neck: 12 mm, bore: 0 mm }')).toMatchObject({ verdict: 'pass' })
    expect(yields('{ class: A2-70 }')).toMatchObject({ verdict: 'caution', says: expect.stringContaining('solid') })
    expect(yields('{ class: A2-70, proof: 60 MPa }')).toMatchObject({ verdict: 'fail' })
    expect(yields('{ tensile: 380 MPa }')).toMatchObject({ verdict: 'not-judged', says: expect.stringContaining('body.proof') })
  })

  it('a wrench without its accuracy allows a caution at best', () => {
    const [strips] = joint(judged(text => text.replace(', accuracy: 4 %', '')))
    expect(strips).toMatchObject({ verdict: 'caution', says: expect.stringContaining('an exact wrench') })
  })

  it('without the ring under the shoulder the pressure is not judged, and its friction is shared as under a hexagon', () => {
    const found = joint(judged(text => text.replace(', hole: 12.5 mm', '')))
    expect(found.find(({ rule }) => rule === 'joint/crushes-under-shoulder')).toMatchObject({
      verdict: 'not-judged',
      change: 'give holes.left.under-shoulder.0.hole'
    })
    expect(found.find(({ rule }) => rule === 'joint/body-yields')).toMatchObject({
      verdict: 'caution',
      says: expect.stringContaining('hexagon')
    })
  })
})

describe('what is missing is named first', () => {
  it.each([
    ['    thread-length: 12 mm\n', 'thread-length', 'parts.part'],
    ['alloy: A380, ', 'casting.alloy', 'holes.left.casting'],
    ['    body: { tensile: 380 MPa, proof: 260 MPa, neck: 12 mm, bore: 0 mm }\n', 'body.tensile', 'parts.part'],
    ['    friction: { nut-factor: 0.16..0.24 }\n', 'friction.nut-factor', 'holes.left'],
    ['    torque: { card: 12 N·m, threads: dry }\n', 'torque.card', 'holes.left']
  ])('%j', (text, field, path) => {
    const [strips] = joint(judged(job => job.replace(text, '')))
    expect(strips).toMatchObject({ verdict: 'not-judged', says: expect.stringContaining(`${field} is not given`), where: { path } })
  })

  it.each([
    ['    shoulder: 17 mm\n', 'parts.part.shoulder'],
    ['    under-shoulder: [{ what: terminal, thickness: 1 mm, hole: 12.5 mm }]\n', 'holes.left.under-shoulder']
  ])('of the ring that bears, without %j', (text, field) => {
    expect(joint(judged(job => job.replace(text, ''))).at(-1)).toMatchObject({ verdict: 'not-judged', change: `give ${field}` })
  })

  it.each([
    ['    thread-length: 12 mm\n', 'seat/bottoms-on-floor', 'parts.part.thread-length'],
    [', threads: dry', 'torque/card-condition', 'parts.part.torque.threads'],
    [', wall: 6 mm', 'hole/wall-broken', 'holes.left.casting.wall'],
    ['wrench: { range: 5..25 N·m, accuracy: 4 % }, ', 'torque/outside-wrench-range', 'tools.wrench.range'],
    ['    torque: { card: 12 N·m, threads: dry }\n', 'joint/casting-strips', 'parts.part.torque.card']
  ])('by its whole path, without %j', (text, rule, field) => {
    const finding = judged(job => job.replace(text, '')).findings.find(one => one.rule === rule)
    expect(finding).toMatchObject({
      change: `give ${field}`,
      says: expect.stringMatching(new RegExp(`^${field.replaceAll('.', '\\.')} is not given`))
    })
  })

  it('an alloy that no table knows, with the near one', () => {
    const [strips] = joint(judged(text => text.replace('alloy: A380', 'alloy: A381')))
    expect(strips).toMatchObject({
      verdict: 'not-judged',
      says: expect.stringMatching(/casting\.shear.*unknown casting alloy "A381"; did you mean A380/)
    })
  })

  it.each([
    ['cast iron', /did you mean grey iron class 20\?/],
    ['monkey metal', /known is one of 380, A380, .*or a shear strength, as "160 MPa"/]
  ])('an alloy %j is told what would be known', (alloy, says) => {
    const [strips] = joint(judged(text => text.replace('alloy: A380', `alloy: ${alloy}`)))
    expect(strips).toMatchObject({ verdict: 'not-judged', says: expect.stringMatching(says), change: 'give holes.left.casting.shear' })
  })
})

it('a bore that leaves no metal has no answer, and the hole is judged all the same', () => {
  const job = judged(text => text.replace('bore: 0 mm', 'bore: 11 mm'))
  expect(joint(job)).toMatchObject([{ rule: 'joint/no-answer', verdict: 'fail', says: expect.stringContaining('leaves no metal') }])
  expect(job.findings.filter(({ rule }) => rule.startsWith('hole/')).length).toBeGreaterThan(4)
})

describe('the hole as it will be', () => {
  const verdictsOf = (change: (text: string) => string) =>
    Object.fromEntries(judged(change).findings.map(({ rule, verdict }) => [rule, verdict]))

  it('a thin wall lets nothing of the casting pass', () => {
    // 1.3 − (12 − 9.5)/2 = 0.05 mm.
    expect(verdictsOf(text => text.replace('wall: 6 mm', 'wall: 1.3 mm'))).toMatchObject({
      'hole/wall-thin': 'fail',
      'hole/metal-below-thin': 'pass',
      'joint/casting-strips': 'caution',
      'joint/engagement-short': 'caution',
      'joint/part-strips': 'pass'
    })
  })

  it('a wall that is not given makes nothing better', () => {
    const said = verdictsOf(text => text.replace(', wall: 6 mm', ''))
    expect(said).toMatchObject({ 'hole/wall-thin': 'not-judged', 'joint/casting-strips': 'caution', 'joint/engagement-short': 'caution' })
  })

  it('a drill beyond the limits takes the thread of the part with it', () => {
    // ws = π/P·d·(P/2 + 0.57735·(d2min − d)): d = 11.4 over 10.676 mm leaves less; d2min of M12x1.5-6g is 10.854 mm.
    const strip = (drill: string) =>
      judged(text => text.replace('size: 10.5 mm', `size: ${drill}`)).results.find(
        ({ id }) => id === 'holes.left:joint.strip-load.external'
      )
    const widthAt = (dMm: number) => dMm * (1.5 / 2 + 0.57735 * (10.854 - dMm))
    expect(Number(strip('11.4 mm')!.value) / Number(strip('10.5 mm')!.value)).toBeCloseTo(widthAt(11.4) / widthAt(10.676), 3)
    expect(verdictsOf(text => text.replace('size: 10.5 mm', 'size: 11.4 mm'))).toMatchObject({ 'joint/casting-strips': 'caution' })
  })

  it('a drill as wide as the thread of the part has no answer', () => {
    const [none] = joint(judged(text => text.replace('size: 10.5 mm', 'size: 11.9 mm')))
    expect(none).toMatchObject({ rule: 'joint/no-answer', verdict: 'fail', says: expect.stringContaining('nothing holds it') })
  })
})

it('a cone whose angle is not given has the stop of the worst angle from 90 to 140°', () => {
  const stop = (bottom: string) => {
    const job = judged(text => text.replace('rod: 0 mm, bottom: flat', `rod: 6 mm, bottom: ${bottom}`))
    return Number(job.results.find(({ id }) => id === 'holes.left:hole.tip-depth')!.value)
  }
  // By hand, the point nearest: 24 + 3·cot 70° − 1 = 24.092; at 90° the rim: 24 + 3 + 4.75·(cot 59° − 1) − 1 = 24.104.
  expect([stop('cone, bottom-angle: 140°'), stop('cone, bottom-angle: 90°'), stop('cone')].map(mm => mm.toFixed(3))).toEqual([
    '24.092',
    '24.104',
    '24.092'
  ])
})
