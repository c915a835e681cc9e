import { circuitFit } from '../../../fitting/circuit-fit.ts'
import { plainOf } from '../../../formula/given.ts'
import { NoAnswer } from '../../../formula/no-answer.ts'
import { silently } from '../../../formula/working.ts'
import type { Drawing } from '../../../report/drawing/drawing.ts'
import { timeCurrentDrawing } from '../../../report/drawing/time-current-drawing.ts'
import { styleOf } from '../../../trade/circuit/protection-styles.ts'
import { protectorCurves } from '../../drawing/protector-curves.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { onFitOf } from '../../job/on-fit-of.ts'

/** Every fuse and breaker against the wire that relies on it, where it was told how that lies. */
export function protectors({ job, result }: JudgedJob): readonly Drawing[] {
  const { circuit } = job
  if (circuit === null) return []
  const { plain } = plainOf(onFitOf(job, circuit))
  const found = orNone(() => silently(() => circuitFit(plain)))
  return plain.protectors.flatMap(({ name, style, ratingA, wire }, i) => {
    const at = found?.protectors[i]
    if (at === undefined || wire === null || wire.lies === null) return []
    const faultA = result(`circuit.${name}:protect.fault`)?.value
    const curves = silently(() =>
      protectorCurves(
        {
          ...wire.lies!,
          conductor: wire.conductor,
          style,
          ratingA,
          loadA: at.loadA,
          inrush: at.inrush?.steps ?? [],
          faultA: typeof faultA === 'number' ? faultA : null
        },
        `${name}, ${ratingA} A ${styleOf(style).says},`
      )
    )
    return curves === undefined ? [] : [timeCurrentDrawing(curves, `protector-${i + 1}`)]
  })
}

/** A circuit without an answer has been told of by its findings. */
function orNone<T>(of: () => T): T | null {
  try {
    return of()
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    return null
  }
}
