import { loadName } from '../../job/circuit-names.ts'
import type { CircuitSubject } from '../../rules/subjects.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { type JobCircuit, protectorMark } from './circuit-wiring.ts'

/** What should be among the loads and what is, and how its fuses and breakers are rated. */
export function drawnIn({
  job: { holes, parts },
  circuit
}: Pick<CircuitJudged, 'job' | 'circuit'>): Pick<CircuitSubject, 'heaterHoles' | 'loadNames' | 'rated'> {
  const heaterHoles = Object.keys(holes).filter(name => parts[holes[name]!.takes]!.kind === 'heater')
  return { heaterHoles, loadNames: circuit.loads.map(loadName), rated: ratedIn(circuit) }
}

/** Whatever its style is. */
function ratedIn({ runs }: JobCircuit): CircuitSubject['rated'] {
  return runs.flatMap(({ through }) =>
    through.flatMap(item => {
      const mark = protectorMark(item)
      return mark === null || item.rating === null ? [] : [{ mark, ratingA: item.rating }]
    })
  )
}
