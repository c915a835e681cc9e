import type { ReadJob } from '../../job/read-job.ts'
import type { PlacedFinding } from '../../report/jobs-answer.ts'
import type { Finding } from '../../rules/finding.ts'
import type { Placed } from './placed.ts'
import { withWholeField } from './whole-field.ts'

/** Every field there is, so that none is forgotten. */
type Whole = { readonly [K in keyof Required<PlacedFinding>]: PlacedFinding[K] }

/** A finding of a thing, with its place in the file and the field that it misses as it stands there. */
export function placedFinding({ job, locate }: ReadJob, { place, path }: Placed, found: Finding): Whole {
  const finding = withWholeField(job, found, path)
  // Written out field by field: a job has many.
  return {
    thing: place,
    where: locate(found.at.length > 0 ? found.at : path),
    rule: finding.rule,
    verdict: finding.verdict,
    value: finding.value,
    limit: finding.limit,
    margin: finding.margin,
    unit: finding.unit,
    says: finding.says,
    change: finding.change,
    source: finding.source,
    at: finding.at,
    assumes: finding.assumes,
    lacks: finding.lacks,
    worstAt: finding.worstAt
  }
}
