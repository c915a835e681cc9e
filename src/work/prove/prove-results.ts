import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import type { Result } from '../../report/answer.ts'
import { resultOf } from '../../report/result.ts'
import type { Proof } from './proof-of.ts'
import { probeText } from './prove-tables.ts'

const HEALTHY = fact('healthyPercent', { says: 'nothing wrong', symbol: 'p', source: SOURCES.bayes })
const FIT = fact('fitPercent', { says: 'sound readings as far off', symbol: '', source: SOURCES.bayes })
const SUSPECT = fact('suspectPercent', { says: 'likeliest fault', symbol: 'q', source: SOURCES.bayes })
const ALIKE = fact('alikeCount', { says: 'others that look the same', symbol: '', source: SOURCES.bayes })
const SIZE = fact('sizeRatio', { says: 'its size', symbol: '', source: SOURCES.bayes })
const NEXT = fact('nextCount', { says: 'measure next', symbol: '', source: SOURCES.bayes })
const GAIN = fact('gainFactor', { says: 'which tells, in bits', symbol: '', source: SOURCES.bayes })

/** What a script wants to know of a proof. */
export function proofResults(proof: Proof): readonly Result[] {
  return [...diagnosisResults(proof), ...nextResults(proof)]
}

function diagnosisResults({ diagnosis }: Proof): readonly Result[] {
  if (diagnosis === null) return []
  const healthy = diagnosis.suspects.find(({ members }) => members[0]!.fault.kind === 'healthy')!
  const suspect = diagnosis.suspects.find(one => one !== healthy)!
  const [first] = suspect.members
  const size = first!.size
  return [
    resultOf('healthy', HEALTHY, 100 * healthy.probabilityRatio),
    resultOf('fault', SUSPECT, first!.fault.id),
    resultOf('fault.alike', ALIKE, suspect.members.length - 1),
    resultOf('fault.probability', { ...SUSPECT, says: 'how likely it is, with those' }, 100 * suspect.probabilityRatio),
    ...(size === null
      ? []
      : [
          {
            ...resultOf('fault.size', { ...SIZE, says: first!.fault.sizeSays }, size.value),
            unit: first!.fault.unit,
            low: size.low,
            high: size.high,
            shown: 'resistance' as const
          }
        ]),
    resultOf('fit', FIT, 100 * diagnosis.fitRatio)
  ]
}

function nextResults({ next: [best] }: Proof): readonly Result[] {
  if (best === undefined) return []
  // The table of points says it for the eye.
  return [resultOf('next-probe', NEXT, probeText(best)), resultOf('next-probe.gain', GAIN, best.gainBits, 'bits')].map(one => ({
    ...one,
    hidden: true
  }))
}
