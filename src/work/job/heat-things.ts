import type { Job } from '../../job/read-job.ts'
import type { Missing } from '../../rules/missing.ts'
import type { CastingFeed } from './casting-feed.ts'
import { judgeSurroundings } from './judge-surroundings.ts'
import { type JudgedWarm, judgeWarm } from './judge-warm.ts'
import type { JudgedThing } from './judged-thing.ts'
import { type Placed, placed } from './placed.ts'

const NO_WARMTH: Missing = { field: 'the warm-up', measure: 'it has no answer' }

/** The warm-up, and the moist air around it, which asks whether the warmed metal stays dry. */
export function heatThings(job: Job, feed: CastingFeed): readonly Placed[] {
  const { warm, surroundings } = job
  const warming = warm === null ? null : placed('warm', warm.path, 'warm', () => judgeWarm({ ...job, warm }, feed))
  const warmed = warming === null ? null : isWarmed(warming) ? warming : { warmed: NO_WARMTH, steady: {}, held: null, state: null }
  return [
    ...(surroundings === null ? [] : [placed('surroundings', surroundings.path, 'dew', () => judgeSurroundings(surroundings, warmed))]),
    ...(warming === null ? [] : [warming])
  ]
}

function isWarmed(thing: JudgedThing | JudgedWarm): thing is JudgedWarm {
  return 'warmed' in thing
}
