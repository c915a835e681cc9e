// example: from the words to the verdict, what nobody gave lets no rule pass; all figures are invented
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../src/work/job/judge-job.ts'
import { outputOf, wordsOf } from '../docs/example-output.ts'

interface Found {
  readonly rule: string
  readonly verdict: string
  readonly says: string
  readonly where: { readonly path: string }
}

async function foundBy(example: string): Promise<readonly Found[]> {
  return JSON.parse((await outputOf([...wordsOf(example), '--json'])).out).findings
}

const WRENCH = 'torque "17 N·m" --lever "240 mm" --adapter "60 mm" --tool "5..25 N·m"'
const HOLE =
  'hole --thread M10 --found-diameter 7.5mm --found-depth 22mm --rod 0mm --bottom cone --bottom-angle 118° --metal-below 5mm --stop-error 0mm --point 118°'

describe('an option left out', () => {
  it.each([
    [WRENCH, 'caution', 'angle'],
    [`${WRENCH} --angle 0°`, 'pass', ''],
    [HOLE, 'caution', 'keep-clear'],
    [`${HOLE} --keep-clear 0.5mm --drill 8.5mm`, 'pass', '']
  ])('%s: %s', async (example, verdict, reason) => {
    const [finding] = await foundBy(example)
    expect(finding?.verdict).toBe(verdict)
    expect(finding?.says).toContain(reason)
  })

  it('is where the finding points', async () => {
    const [finding] = await foundBy(HOLE.replace('--stop-error 0mm', '--stop-error 0.2mm'))
    expect(finding?.where.path).toBe('--stop-error')
  })
})

const JOB = `
fettle: 1
job: { title: assumed }
parts: { part: { kind: plug, thread: M10, thread-length: 9 mm } }
holes:
  left:
    takes: part
    found: { diameter: 7.5 mm, depth: 22 mm }
`

function verdictIn(text: string, rule: string): Found | undefined {
  const { findings, errors } = judgeJob('job.yaml', text)
  expect(errors).toEqual([])
  return findings.find(one => one.rule === rule)
}

describe('a field left out of a job', () => {
  it('the drill: inside the limits, and still no pass', () => {
    const finding = verdictIn(JOB, 'hole/drill-outside-limits')
    expect(finding).toMatchObject({ verdict: 'caution', where: { path: 'holes.left.drill.size' } })
    expect(finding?.says).toContain('the published tap drill')
    expect(verdictIn(`${JOB}    drill: { size: 8.5 mm }\n`, 'hole/drill-outside-limits')?.verdict).toBe('pass')
  })

  it('the length of the part: what rests on it is not judged, and names it', () => {
    const without = JOB.replace(', thread-length: 9 mm', ', overall: 12 mm')
    for (const rule of ['seat/jams-in-run-out', 'seat/bottoms-on-floor', 'seat/jams-without-terminal'])
      expect(verdictIn(without, rule)?.says).toContain('thread-length is not given')
  })
})
