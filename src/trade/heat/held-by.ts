import type { Given, Plain } from '../../formula/given.ts'
import { surfaceMarginK } from './moist-air.ts'
import { cutMarginK, onMarginK } from './thermostat.ts'

/** The metal at which it takes the power off, and at which it puts it on again, where somebody told that. */
export interface Thermostat {
  readonly offC: Given
  readonly onC: Given | null
}

/** What metal must stay above, as far as it is known. */
interface Above {
  readonly targetC: number | null
  readonly pointC: number | null
}

/** Where a thermostat holds the metal against what it must stay above: open it may be at the one, and cool to the other. */
export function heldBy({ offC, onC }: Plain<Thermostat>, { targetC, pointC }: Above) {
  return {
    offC,
    onC,
    cutMarginK: targetC === null ? null : cutMarginK({ offC, targetC }),
    onMarginK: targetC === null || onC === null ? null : onMarginK({ onC, targetC }),
    dewCutMarginK: pointC === null ? null : surfaceMarginK({ surfaceC: offC, pointC }),
    dewOnMarginK: pointC === null || onC === null ? null : surfaceMarginK({ surfaceC: onC, pointC })
  }
}
