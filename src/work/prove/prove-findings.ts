import { Given } from '../../formula/given.ts'
import type { Finding } from '../../rules/finding.ts'
import { faultLikely } from '../../rules/prove/fault-likely.ts'
import { loopOpen } from '../../rules/prove/loop-open.ts'
import { outOfBand } from '../../rules/prove/out-of-band.ts'
import { asked } from '../../rules/rule.ts'
import type { Suspect } from '../../trade/proof/diagnosis.ts'
import { pointText } from '../../trade/proof/drawn.ts'
import { UNEXPLAINED_RATIO } from '../../trade/proof/two-faults.ts'
import type { Proof } from './proof-of.ts'
import type { TakenReading } from './taken-readings.ts'

export interface ProofFindings {
  readonly loops: readonly Finding[]
  readonly readings: readonly Finding[]
  readonly fault: Finding
}

/** Loops first: readings that contradict each other are not worth judging one by one. */
export function proofFindings(proof: Proof): ProofFindings {
  return {
    loops: loopFindings(proof),
    readings: proof.readings.map((reading, i) => readingFinding(reading, proof.bands[i]!)),
    fault: faultFinding(proof)
  }
}

function loopFindings({ loops, readings }: Proof): readonly Finding[] {
  if (readings.length === 0) return []
  if (loops.length === 0) return [asked(loopOpen, { loop: null })]
  return loops.map(({ steps, sumV, allowedV }) => {
    const points = steps.map(({ index }) => pointText(readings[index]!)).join(', ')
    return asked(loopOpen, { loop: { points, leftOverV: sumV, allowedV, path: readings[steps[0]!.index]!.path } })
  })
}

function readingFinding(reading: TakenReading, { low, high, ideal }: Proof['bands'][number]): Finding {
  const { takes, value, meter, path } = reading
  const assumedMeter: readonly Given[] =
    meter.assumed === undefined ? [] : [new Given(meter.accuracyPercent, { assumed: meter.assumed, at: ['proof', 'meter', takes] })]
  return asked(outOfBand, { takes, at: pointText(reading), value, low, high, hangsOn: [...ideal.hangsOn, ...assumedMeter], path })
}

/** The first of those that look the same, and how many more. */
function nameOf({ members }: Suspect): string {
  const [first, ...others] = members
  return `${first!.fault.says}${others.length === 0 ? '' : ` or ${others.length} more that look the same`}`
}

function faultFinding({ diagnosis }: Proof): Finding {
  if (diagnosis === null) return asked(faultLikely, { diagnosis: null })
  const { suspects, fitRatio } = diagnosis
  const healthy = suspects.find(({ members }) => members[0]!.fault.kind === 'healthy')
  const likeliest = suspects.find(suspect => suspect !== healthy)
  return asked(faultLikely, {
    diagnosis: {
      healthyPercent: 100 * (healthy?.probabilityRatio ?? 0),
      likeliestPercent: 100 * (likeliest?.probabilityRatio ?? 0),
      likeliest: likeliest === undefined ? 'none' : nameOf(likeliest),
      unexplained: fitRatio < UNEXPLAINED_RATIO
    }
  })
}
