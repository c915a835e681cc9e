import { circuitFit } from '../../fitting/circuit-fit.ts'
import { nominalPlain } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { silently } from '../../formula/working.ts'
import type { SubjectOf } from '../../rules/rule.ts'
import type { none } from '../../rules/switch/none.ts'
import { fedThrough, staysFed } from '../../trade/circuit/switched-by.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { loadIn } from './in-position.ts'
import { switchRuns } from './on-together.ts'
import { positionFit } from './position-fit.ts'

/** A load with a twentieth of its voltage, as a walk of faults has it, is off. */
const OFF = 0.05 ** 2

/** What takes the power off a load; nothing where it stays fed, by itself or through others. */
export function switchedOff(judged: CircuitJudged, name: string): Omit<SubjectOf<typeof none>, 'load'> {
  const { wiring } = judged.guards
  const runs = switchRuns(judged.circuit)
  const open = runs.map(({ id }) => id)
  if (staysFed(wiring, name, open)) return { switchedBy: [] }
  const through = fedThrough(wiring, name, open)
  const leftW = through === null ? 0 : powerWith(judged, name, open)
  if (through === null || (leftW !== null && leftW <= OFF * greatestW(judged, name))) return { switchedBy: switchedBy(judged, name) }
  return { switchedBy: [], left: { off: runs.flatMap(({ items }) => items), through, powerW: leftW } }
}

/** What stands in series with a load, that which takes its power off alone before the rest; else what does together, each beside the other. */
function switchedBy({ circuit, guards: { wiring, guarding } }: CircuitJudged, name: string): readonly string[] {
  const runs = switchRuns(circuit)
  const inSeries = runs.filter(({ id }) => guarding.get(id)!.loads.includes(name))
  const alone = inSeries.filter(({ id }) => fedThrough(wiring, name, [id]) === null)
  const beside = runs.filter(one =>
    staysFed(
      wiring,
      name,
      runs.flatMap(({ id }) => (id === one.id ? [] : [id]))
    )
  )
  return [alone, inSeries, beside].find(some => some.length > 0)?.flatMap(({ items }) => items) ?? []
}

/** At the nominal; null where that has no answer. */
function powerWith({ circuit, ...fitted }: CircuitJudged, name: string, open: readonly string[]): number | null {
  const fit = positionFit(fitted, circuit, new Set(open))
  try {
    const { loads } = silently(() => circuitFit(nominalPlain(fit)))
    return Math.abs(loads.find(load => load.name === name)!.powerW)
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    return null
  }
}

function greatestW({ positions: { worked } }: CircuitJudged, name: string): number {
  return Math.max(...worked.map(position => Math.abs(loadIn(position, name).powerW.value)))
}
