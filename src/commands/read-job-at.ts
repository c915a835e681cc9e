import { type ReadJob, readJob, unread } from '../job/read-job.ts'
import type { Live } from './describe.ts'
import { readJobFile } from './read-job-file.ts'

/** A job by the name of its file; one that cannot be read is a job with that fault. */
export async function readJobAt(file: string, live: Pick<Live, 'input'>): Promise<ReadJob> {
  const read = await readJobFile(file, live)
  return 'text' in read ? readJob(file, read.text, read.bench) : unread(file, read.error)
}
