import { Given } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import type { Job } from '../../job/read-job.ts'
import { USUAL_BENCH } from '../../job/schema/proof.ts'
import type { Kind } from '../../quantity/kinds.ts'
import { parseQuantity } from '../../quantity/parse-quantity.ts'

export interface Bench {
  readonly leads: Given
  readonly testCurrent: Given
}

/** Leads and test current of a job, or the usual ones. */
export function benchOf({ proof }: Job): Bench {
  return {
    leads: proof.leads ?? usual('leads', 'resistance', SOURCES['test-leads'].title),
    testCurrent: proof['test-current'] ?? usual('test-current', 'current', `for the ${SOURCES['millivolt-drop'].title}`)
  }
}

function usual(field: keyof typeof USUAL_BENCH, kind: Kind, why: string): Given {
  const amount = parseQuantity(kind, USUAL_BENCH[field])
  if (!amount.ok) throw new Error(`the usual ${field} cannot be read`)
  return new Given(amount.value.value, { ...amount.value, assumed: `default: ${why}`, at: ['proof', field] })
}
