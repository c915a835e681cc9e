import { Given } from '../formula/given.ts'
import { leafFields, withValue } from './leaf-fields.ts'
import type { Job } from './read-job.ts'

/** The same job with every quantity at its nominal: enough to see what can be judged at all, and soon done. */
export function withoutBounds(job: Job): Job {
  return leafFields(job).reduce(
    (exact, { path, value }) => (value instanceof Given && value.low < value.high ? withValue(exact, path, nominal(value)) : exact),
    job
  )
}

function nominal({ value, assumed, at }: Given): Given {
  return new Given(value, { assumed, at })
}
