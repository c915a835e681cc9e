// example: a wide neck whose terminal is left off. Status: invented jobs, hand arithmetic
import { describe, expect, it } from 'vitest'
import { judgedJob } from '../../../src/work/job/judged-job.ts'
import { planOf } from '../../../src/work/plan/plan.ts'

// M14x1.5: D1 = 14 − 1.0825 · 1.5 = 12.376 mm, drilled 12.5. The hole is deep enough for the part without anything under it.
const text = (body: string, mouth: string, undercut = '1.2 ± 0.1 mm', found = '11.6 mm, depth: 24') => `fettle: 1
job: { title: Thermostat housing, practice: road }
parts:
  stub: { kind: plug, thread: M14x1.5, thread-length: 12 ± 0.1 mm, undercut: ${undercut}, overall: 13.5 ± 0.1 mm, body: ${body} }
tools: { taps: [{ name: bottoming, chamfer: 1.5 }] }
holes:
  housing:
    takes: stub
    found: { diameter: ${found} ± 0.3 mm, rod: 6 mm, bottom: cone, bottom-angle: 118° }
    drill: { size: 12.5 mm, point: 118° }
    under-shoulder: [{ what: ring terminal, thickness: 1.2 ± 0.05 mm, hole: 14.5 mm }]
    crush: 0.05 mm
    mouth: ${mouth}
`

function judged(...told: Parameters<typeof text>) {
  const job = judgedJob('x.yaml', text(...told))
  expect(job.answer.errors).toEqual([])
  const finding = job.answer.findings.find(({ rule }) => rule === 'seat/jams-without-terminal')!
  const result = (id: string) => job.result(`holes.housing:seat.${id}`)
  const step = planOf(job).steps.find(({ says }) => says === 'put the ring terminal under the shoulder')
  return { finding, result, never: step?.caution, scraps: planOf(job).scraps }
}

describe('told, in a mouth of 1.2 ± 0.1 mm', () => {
  const { finding, result, never, scraps } = judged('{ neck: 13.9 mm }', '1.2 ± 0.1 mm')

  // Worst: the neck goes 1.1 − (13.9 − 12.376)/2 = 0.338 into the mouth and is 1.3 long.
  it('it stands in the mouth 0.96 mm before the shoulder lands', () => {
    expect(finding.verdict).toBe('caution')
    expect(finding.value).toBeCloseTo(-0.962, 3)
    expect(finding.says).toContain('stops with a gap of 0.96 mm left under the shoulder')
    expect(never).toContain('at the worst end the part would jam with 0.96 mm left under the shoulder')
  })

  // Nominal 1.2 − 0.762 = 0.438 of 1.2: 0.762 to feel, from 0.562 to 0.962. With 0.05 of crush the stack takes 0.812, at worst 1.012.
  it('what is to be felt and the least stack count it', () => {
    expect(result('feel-gap')).toMatchObject({
      value: expect.closeTo(0.762, 3),
      low: expect.closeTo(0.562, 3),
      high: expect.closeTo(0.962, 3)
    })
    expect(result('least-stack')).toMatchObject({ value: expect.closeTo(0.812, 3), high: expect.closeTo(1.012, 3) })
    expect(scraps.map(({ says }) => says).join()).toContain('under the shoulder: below 1.02 mm, at the worst end, the part jams')
  })

  // 0.338 + 1.15 − 0.05 − 1.3.
  it('on the terminal 0.14 mm are left', () => {
    expect(result('rim.with-stack')?.low).toBeCloseTo(0.138, 3)
  })
})

it('told so narrow that it goes between the threads, it stops nothing', () => {
  const { finding, result, never } = judged('{ neck: 12.4 mm }', '0 mm')
  expect(finding.says).toContain('of room is left at the worst end')
  expect(result('rim.without-stack')).toBeUndefined()
  expect(never).toContain('it would seat')
})

// The hole has thread enough: with nothing to stand on the rim only run-out and floor stop the part, and neither does.
it('told of no length, it is no neck, however wide', () => {
  const { finding, result, never } = judged('{ neck: 14 mm }', '0.5 mm', '0 mm')
  expect(finding.says).toContain('of room is left at the worst end')
  expect(result('rim.without-stack')).toBeUndefined()
  expect(result('feel-gap')?.value).toBe(0)
  expect(never).toContain('it would seat')
})

// Found 12.58 mm wide at least, all along 3 mm of neck: wider than the 12.55 of the neck, whatever the drill. 14.7 mm deep with a
// bottom of any shape, 14.7 − 0.3 − 12.62 = 1.78 mm of it are sure.
it('an old hole wider than the drill lets it through, as deep as it surely is', () => {
  const of = (depth: string) => judgedJob('x.yaml', text('{ neck: 12.55 mm }', '0 mm', '3 mm', `12.6 ± 0.02 mm, depth: ${depth}`))
  expect(of('24').answer.errors).toEqual([])
  expect(of('14.7').answer.errors[0]?.found).toContain('a neck of 12.55 mm in a hole 12.50 mm wide')
})

// As wide as the thread: 1.1 − (14 − 12.376)/2 = 0.288 of 1.3.
it('its width not told, it is no pass, and the field is named', () => {
  const { finding, never } = judged('{ bore: 8 mm }', '1.2 ± 0.1 mm')
  expect(finding.verdict).toBe('caution')
  expect(finding.says).toContain(
    'parts.stub.body.neck is not given, and it may be as wide as the thread: without the stack a neck of 14.00 mm'
  )
  expect(finding.says).toContain('1.01 mm before the shoulder lands')
  expect(finding.assumes).toContainEqual(['parts', 'stub', 'body', 'neck'])
  expect(never).toContain('nobody told how wide its neck is, and as wide as the thread it would jam')
})
