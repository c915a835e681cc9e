import type { PlacedFinding } from '../../report/jobs-answer.ts'
import { thingName } from '../../report/plan/thing-name.ts'

export interface Alike {
  /** `circuit, panel-switched; circuit, switched-tee` */
  readonly things: string
  readonly one: PlacedFinding
}

/** Findings that say the same of several things, told once. */
export function alike(findings: readonly PlacedFinding[]): readonly Alike[] {
  const same = ({ rule, says, change }: PlacedFinding) => JSON.stringify([rule, says, change])
  return [...new Set(findings.map(same))].map(key => {
    const all = findings.filter(one => same(one) === key)
    return { things: all.map(({ thing }) => thingName(thing)).join('; '), one: all[0]! }
  })
}
