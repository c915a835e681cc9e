// example: what is on and off while a circuit is measured, by hand
import { describe, expect, it } from 'vitest'
import { judgedJob } from '../../../src/work/job/judged-job.ts'
import { planOf } from '../../../src/work/plan/plan.ts'
import { proveJob } from '../../../src/work/prove/prove-job.ts'
import { sheetOf } from '../../../src/work/sheet/sheet.ts'

/** Two loads of 2 ohm at 12 V behind S1: in series by S3, in parallel by S2 and S4, all three at once a short. */
function job(drawn: { readonly [mark: string]: string }) {
  const item = (mark: string) => `{ switch: ${mark}, rating: 16 A, resistance: 0 ohm${drawn[mark] ?? ''} }`
  return `fettle: 1
job: { title: both ways }
circuit:
  source: { bus: 12 V, resistance: 0 ohm, ground: neg }
  runs:
    - { from: bus, to: sw, through: [${item('S1')}] }
    - { from: m, to: neg, through: [${item('S2')}] }
    - { from: m, to: r, through: [${item('S3')}] }
    - { from: sw, to: r, through: [${item('S4')}] }
  loads:
    - { load: left, resistance: 2 ohm, from: sw, to: m }
    - { load: right, resistance: 2 ohm, from: r, to: neg }
`
}

const OPEN = ', state: open'
const answerOf = (text: string, typed: readonly string[] = []) => proveJob({ file: 'x.yaml', text, typed, working: false }).answer
const expectedAt = (text: string, at: string, takes: string) =>
  answerOf(text).tables['expected']!.rows.find(row => row['at'] === at && row['takes'] === takes)!['value']

describe('drawn in series', () => {
  const text = job({ S2: OPEN, S4: OPEN })

  it('both share 12 V, and 3 A flow: with S2 and S4 on as well the source would be shorted', () => {
    expect(expectedAt(text, 'sw to m', 'volts')).toBeCloseTo(6, 4)
    expect(expectedAt(text, 'r to neg', 'volts')).toBeCloseTo(6, 4)
    expect(expectedAt(text, 'sw to m', 'amps')).toBeCloseTo(3, 4)
  })

  it('what is off is told, and nothing stays as if it were on', () => {
    const { cautions } = answerOf(text)
    expect(cautions[0]).toMatch(/^switch S2 and switch S4 drawn open: every reading is expected with them off; .*source would be shorted/)
    expect(cautions.join()).not.toMatch(/with (it|them) on/)
  })

  it('what lies between both is no ground to pass a current through', () => {
    const passed = answerOf(text).tables['expected']!.rows.filter(({ passing }) => passing !== null)
    expect(passed).toEqual([])
  })

  it('readings of a sound circuit name no fault', () => {
    const { findings } = answerOf(text, ['sw TO m=6.0 V', 'r TO neg=6.0 V', 'bus TO neg=12.0 V'])
    expect(findings.filter(({ verdict }) => verdict === 'fail')).toEqual([])
  })

  it('plan and sheet say it too', () => {
    const judged = judgedJob('x.yaml', text)
    expect(planOf(judged).steps.find(({ says }) => says.includes('read the bus'))?.caution).toContain(
      'with everything switched on but switch S2 and switch S4'
    )
    expect(JSON.stringify(sheetOf(judged))).toContain('power on, everything switched on but switch S2 and switch S4')
  })
})

describe('drawn in parallel', () => {
  const text = job({ S3: OPEN })

  it('each has 12 V and takes 6 A, 12 A in all', () => {
    expect(expectedAt(text, 'sw to m', 'volts')).toBeCloseTo(12, 4)
    expect(expectedAt(text, 'r to neg', 'volts')).toBeCloseTo(12, 4)
    expect(expectedAt(text, 'bus to sw', 'amps')).toBeCloseTo(12, 4)
    expect(answerOf(text).cautions[0]).toMatch(/^switch S3 drawn open: every reading is expected with it off;/)
  })

  it('readings of a sound circuit name no fault', () => {
    const { findings } = answerOf(text, ['sw TO m=12.0 V', 'r TO neg=12.0 V', 'bus TO neg=12.0 V'])
    expect(findings.filter(({ verdict }) => verdict === 'fail')).toEqual([])
  })
})

it('drawn in series behind an open switch: that alone is on', () => {
  const { cautions } = answerOf(job({ S1: OPEN, S2: OPEN, S4: OPEN }))
  expect(cautions[0]).toBe('switch S1 drawn open: every reading is expected with it on')
  expect(cautions[1]).toMatch(/^switch S2 and switch S4 drawn open: every reading is expected with them off;/)
  expect(expectedAt(job({ S1: OPEN, S2: OPEN, S4: OPEN }), 'r to neg', 'volts')).toBeCloseTo(6, 4)
})
