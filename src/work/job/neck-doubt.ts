import { Given } from '../../formula/given.ts'
import { bareNeckOnRim, neckOnRim } from '../../job/neck-on-rim.ts'
import type { Finding } from '../../rules/finding.ts'
import { doubted } from '../../rules/judge.ts'
import { bottomsOnFloor } from '../../rules/seat/bottoms-on-floor.ts'
import { jamsInRunOut } from '../../rules/seat/jams-in-run-out.ts'
import { jamsWithoutTerminal } from '../../rules/seat/jams-without-terminal.ts'
import { threadNotEngaged } from '../../rules/seat/thread-not-engaged.ts'
import type { JobHole, JobPart } from './hole-fit-of.ts'

/** What is judged with the shoulder down on its stack. */
const LANDED: ReadonlySet<string> = new Set([jamsInRunOut, bottomsOnFloor, jamsWithoutTerminal, threadNotEngaged].map(({ id }) => id))

/** Where a neck as wide as the thread would stand on the rim, in words: on the stack, and without it. */
export interface NeckUntold {
  readonly at: Finding['at']
  /** As the field or the option is called. */
  readonly name: string
  readonly seated: string | null
  readonly bare: string | null
}

/** A plain length whose width nobody told may be as wide as the thread: no pass of the seat where that would stand on the rim. */
export function neckDoubted(findings: readonly Finding[], hole: JobHole, part: JobPart): readonly Finding[] {
  if (part.body !== null && part.body.neck !== null) return findings
  const wideMm = new Given(part.thread.majorMm)
  const at = [...part.path, 'body', 'neck']
  return unsureOfNeck(findings, { at, name: at.join('.'), seated: neckOnRim(wideMm, hole, part), bare: bareNeckOnRim(wideMm, hole, part) })
}

export function unsureOfNeck(findings: readonly Finding[], { at, name, seated, bare }: NeckUntold): readonly Finding[] {
  const untold = `${name} is not given, and it may be as wide as the thread`
  return findings.map(finding => {
    const { rule, verdict, assumes } = finding
    const without = bare === null || rule !== jamsWithoutTerminal.id ? null : `${untold}: without the stack ${bare}`
    const doubt = without ?? (seated === null ? null : `${untold}: ${seated}`)
    if (doubt === null || !LANDED.has(rule) || (verdict !== 'pass' && verdict !== 'caution')) return finding
    return { ...doubted(finding, [doubt]), assumes: [...(assumes ?? []), at] }
  })
}
