import { Given } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { silently } from '../../formula/working.ts'
import { showNumber } from '../../quantity/show.ts'
import { type Finding, rankOf } from '../../rules/finding.ts'
import { USUAL_UNDERCUT_TURNS } from '../../trade/thread/undercut.ts'
import type { JobPart } from './hole-fit-of.ts'

/**
 * A part of which nobody told a plain length under the shoulder is taken as threaded up to it. Whatever would be judged worse behind a
 * regular undercut is no pass, and names the field.
 */
export function undercutDoubted(
  findings: readonly Finding[],
  { undercut, thread, path }: Pick<JobPart, 'undercut' | 'thread' | 'path'>,
  judged: (undercutMm: Given) => readonly Finding[]
): readonly Finding[] {
  if (undercut.assumed === undefined || !findings.some(isHopeful)) return findings
  const undercutMm = new Given(USUAL_UNDERCUT_TURNS * thread.pitchMm)
  const others = withoutThread(() => silently(() => judged(undercutMm)))
  const why = `its thread is taken to run up to the shoulder: behind a regular undercut of ${showNumber(undercutMm.value, 'length')} mm${STANDARD[thread.system]}`
  return findings.map(finding => {
    const less = lessOf(finding, others)
    if (less === null) return finding
    const assumes = [...(finding.assumes ?? []), [...path, 'undercut']]
    return { ...finding, verdict: 'caution', says: `${finding.says}; ${why} ${less}`, assumes }
  })
}

const MARGINS: { readonly [unit: string]: 'length' | 'force' } = { mm: 'length', N: 'force' }

/** The standard is one of metric threads. */
const STANDARD = { metric: ' (DIN 76-1, memory)', unified: ', as for a metric thread (DIN 76-1, memory),' }

function isHopeful({ verdict }: Finding): boolean {
  return verdict === 'pass' || verdict === 'caution'
}

/** How much worse it is, in words, or what else is then said; null where the verdict stands either way. */
function lessOf(finding: Finding, others: readonly Finding[] | null): string | null {
  if (!isHopeful(finding)) return null
  if (others === null) return 'nothing holds it'
  const other = others.find(({ rule }) => rule === finding.rule)
  if (other === undefined) return null
  if (other.margin !== null && other.margin < 0)
    return (finding.margin ?? 0) < 0 ? null : `the margin is ${showNumber(other.margin, MARGINS[other.unit] ?? 'property')} ${other.unit}`
  return rankOf(other.verdict) > rankOf(finding.verdict) ? newIn(other.says, finding.says) : null
}

function newIn(says: string, known: string): string {
  const parts = known.split('; ')
  return says
    .split('; ')
    .filter(part => !parts.includes(part))
    .join(', ')
}

/** Null where no thread is left to reckon with. */
function withoutThread(judged: () => readonly Finding[]): readonly Finding[] | null {
  try {
    return judged()
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    return null
  }
}
