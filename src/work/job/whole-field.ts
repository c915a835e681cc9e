import type { Field, Path } from '../../job/field.ts'
import type { Job } from '../../job/read-job.ts'
import { JOB } from '../../job/schema/job.ts'
import type { Finding } from '../../rules/finding.ts'

/** A finding that misses a field, with that field as it stands in the file: `parts.heater.thread-length`, where the rule says `thread-length`. */
export function withWholeField(job: Job, finding: Finding, thing: Path): Finding {
  const { lacks, at, says, change } = finding
  if (lacks === undefined) return finding
  const found = [at, thing, partIn(job, thing)].map(place => wholeField(lacks, place)).find(field => field !== null)
  if (found === undefined || found === null) return finding
  const [plain, whole] = [`${lacks} is not given`, `${found} is not given`]
  return {
    ...finding,
    lacks: found,
    says: says.startsWith(plain) ? whole + says.slice(plain.length) : says,
    change: change === `give ${lacks}` ? `give ${found}` : change
  }
}

/** The part that a hole takes: what is asked of a hole may be missing there. */
function partIn({ holes }: Job, [block, name]: Path): Path {
  const hole = block === 'holes' ? holes[String(name)] : undefined
  return hole === undefined ? [] : ['parts', hole.takes]
}

/** Looked for in the block itself, then in those around it. */
function wholeField(lacks: string, place: Path): string | null {
  const keys = lacks.split('.')
  const blocks = Array.from({ length: place.length + 1 }, (_, n) => place.slice(0, place.length - n))
  const block = blocks.find(one => within(fieldAt(one), keys))
  return block === undefined ? null : [...block, ...keys].join('.')
}

function fieldAt(path: Path): Field | undefined {
  return path.reduce<Field | undefined>((field, key) => {
    if (field?.is === 'map') return field.of[key]
    return field?.is === 'named' || field?.is === 'list' ? field.of : undefined
  }, JOB)
}

function within(field: Field | undefined, [key, ...rest]: readonly string[]): boolean {
  if (key === undefined) return field !== undefined
  return field?.is === 'map' && within(field.of[key], rest)
}
