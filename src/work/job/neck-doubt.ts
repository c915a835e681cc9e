import { Given } from '../../formula/given.ts'
import { neckOnRim } from '../../job/neck-on-rim.ts'
import type { Finding } from '../../rules/finding.ts'
import { doubted } from '../../rules/judge.ts'
import { bottomsOnFloor } from '../../rules/seat/bottoms-on-floor.ts'
import { jamsInRunOut } from '../../rules/seat/jams-in-run-out.ts'
import { jamsWithoutTerminal } from '../../rules/seat/jams-without-terminal.ts'
import { threadNotEngaged } from '../../rules/seat/thread-not-engaged.ts'
import type { JobHole, JobPart } from './hole-fit-of.ts'

/** What is judged with the shoulder down on its stack. */
const LANDED: ReadonlySet<string> = new Set([jamsInRunOut, bottomsOnFloor, jamsWithoutTerminal, threadNotEngaged].map(({ id }) => id))

/** A plain length whose width nobody told may be as wide as the thread: no pass of the seat where that would stand on the rim. */
export function neckDoubted(findings: readonly Finding[], hole: JobHole, part: JobPart): readonly Finding[] {
  if (part.body !== null && part.body.neck !== null) return findings
  const stands = neckOnRim(new Given(part.thread.majorMm), hole, part)
  if (stands === null) return findings
  const at = [...part.path, 'body', 'neck']
  return findings.map(finding =>
    LANDED.has(finding.rule) && (finding.verdict === 'pass' || finding.verdict === 'caution')
      ? {
          ...doubted(finding, [`${at.join('.')} is not given, and it may be as wide as the thread: ${stands}`]),
          assumes: [...(finding.assumes ?? []), at]
        }
      : finding
  )
}
