import type { FittedSwitch } from '../../fitting/circuit.ts'
import type { Given } from '../../formula/given.ts'
import { loadName, markedItem } from '../../job/circuit-names.ts'
import { SWITCH_FACTORS, type SwitchLoad } from '../../trade/circuit/switch-factor.ts'
import type { Guards } from './circuit-guards.ts'
import { type JobCircuit, type JobLoad, namedRuns } from './circuit-wiring.ts'

const [, AT_28_V] = SWITCH_FACTORS

/** Whatever switches, a thermostat and a relay no less, with the hardest load behind it. */
export function switchesOf(circuit: JobCircuit, { guarding }: Guards): readonly FittedSwitch[] {
  return namedRuns(circuit).flatMap(({ id, run }) => {
    const behind = circuit.loads.filter(load => guarding.get(id)!.loads.includes(loadName(load)))
    return run.through.flatMap(item => {
      const { does, mark: name } = markedItem(item)
      return does === 'switches' ? [{ name, run: id, load: worstKind(behind), coldRatio: worstRatio(behind) }] : []
    })
  })
}

function worstKind(loads: readonly JobLoad[]): SwitchLoad {
  return loads.map(({ kind }) => kind).reduce<SwitchLoad>((worst, kind) => (AT_28_V[kind] > AT_28_V[worst] ? kind : worst), 'resistive')
}

function worstRatio(loads: readonly JobLoad[]): Given | null {
  return loads.flatMap(({ inrush }) => inrush?.times ?? []).toSorted((a, b) => b.high - a.high)[0] ?? null
}
