import { boundsOf, nominalOf } from '../../formula/bounds.ts'
import { nominalPlain } from '../../formula/given.ts'
import { resultsBy } from '../../report/result-map.ts'
import { AIR_RULES } from '../../rules/list.ts'
import { isMissing, type Missing } from '../../rules/missing.ts'
import { asked, type SubjectOf } from '../../rules/rule.ts'
import * as cautions from '../../trade/heat/cautions.ts'
import { dew, overIce } from '../../trade/heat/dew.ts'
import { dewCautions } from '../../trade/heat/warm-cautions.ts'
import { DEW_RESULTS } from '../results/dew-results.ts'
import { hasPoint, type JobSurroundings, moistureOf, NO_HUMIDITY, noPointOf } from './cold-air-of.ts'
import { inPosition } from './in-position.ts'
import type { JudgedWarm } from './judge-warm.ts'
import { type JudgedThing, prefixed } from './judged-thing.ts'

type Warming = Pick<JudgedWarm, 'warmed' | 'steady' | 'held' | 'state'>

/** What the rules are asked about. */
type AirSubject = SubjectOf<(typeof AIR_RULES)[number]>

const DRAWN = { state: null }

const NO_METAL: Missing = { field: 'surroundings.metal', measure: 'a contact thermometer on the casting, before the start' }

/** The moist air of a job, and whether the metal stays dry in it: warmed where the job warms it, else as it is. */
export function judgeSurroundings(surroundings: JobSurroundings, warmed: Warming | null): JudgedThing {
  const { air: airC, altitude: altitudeM, metal: surfaceC } = surroundings
  const moisture = moistureOf(surroundings)
  if (moisture === null || !hasPoint({ airC, altitudeM, moisture }))
    return { results: [], findings: found({ surface: noPointOf(surroundings) }) }
  const tree = { airC, altitudeM, moisture, surfaceC }
  const ice = nominalOf(tree, overIce)
  const bounds = boundsOf(tree, x => dew(x, ice))
  const { governs, surfaceMarginK } = bounds
  const asIs = surfaceMarginK === null ? NO_METAL : { surfaceMarginK, of: 'the metal without heat', governs }
  return {
    results: prefixed('dew', resultsBy(DEW_RESULTS, bounds)),
    findings: found({ surface: warmed === null ? asIs : whenWarmed(warmed, governs) }).map(one => inPosition(one, warmed ?? DRAWN)),
    cautions: [
      ...dewCautions(nominalPlain({ moisture, surfaceC: null })),
      ...(warmed === null && surfaceMarginK !== null ? [cautions.MARGIN_IS_AN_ESTIMATE, cautions.COOLING_NOT_ENTERED] : [])
    ]
  }
}

function whenWarmed({ warmed, steady, held }: Warming, governs: string): AirSubject['surface'] {
  if (isMissing(warmed)) return warmed
  return warmed.dewMarginK === null
    ? NO_HUMIDITY
    : { surfaceMarginK: warmed.dewMarginK, of: 'the metal, warmed and settled,', governs, held, ...steady }
}

function found(subject: AirSubject) {
  return AIR_RULES.map(rule => asked(rule, subject))
}
