import type { Held, HeldAbove } from '../../rules/held-metal.ts'
import type { Holding } from './thermostat-of.ts'
import type { Warmed } from './warm-worked.ts'

type Margins = Pick<HeldAbove, 'onMarginK'> & { readonly cutMarginK: HeldAbove['cutMarginK'] | null }

/** Against the target. */
export function heldAboveTarget({ held, steadyC }: Warmed, holding: Holding): Held {
  return heldAbove({ held, steadyC }, holding, held)
}

/** Against the higher of dew and frost point. */
export function heldAboveDew({ held, steadyC }: Warmed, holding: Holding): Held {
  return heldAbove({ held, steadyC }, holding, held && { cutMarginK: held.dewCutMarginK, onMarginK: held.dewOnMarginK })
}

function heldAbove({ held, steadyC }: Pick<Warmed, 'held' | 'steadyC'>, holding: Holding, margins: Margins | null): Held {
  if (holding !== 'told') return holding === 'untold' ? 'untold' : null
  if (held === null || margins === null || margins.cutMarginK === null) return null
  const { offC, onC } = held
  const { cutMarginK, onMarginK } = margins
  return { offC, onC, cutMarginK, onMarginK, opens: steadyC.high > offC.low }
}
