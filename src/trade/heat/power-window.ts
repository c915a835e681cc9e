import type { Given, Plain } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { type Film, filmAt } from './film.ts'
import * as fixed from './fixed-power.ts'
import * as heating from './heating.ts'

/** A heater of fixed resistance: its power follows the square of the bus. Heat goes to the air alone. */
export interface PowerWindow {
  readonly areaM2: Given
  readonly altitudeM: Given
  /** Must be held in the coldest air that moves. */
  readonly cold: { readonly targetC: Given; readonly airC: Given; readonly film: Film; readonly busV: Given }
  /** What the part or a seal may reach in the hottest air that stands. */
  readonly hot: { readonly limitC: Given; readonly airC: Given; readonly film: Film; readonly busV: Given }
  readonly ratedV: Given
}

/** Rated powers. The films are those at target and limit, where the power has to hold. */
export function powerWindow({ areaM2, altitudeM, cold, hot, ratedV }: Plain<PowerWindow>) {
  const coldWPerK = lossAtWPerK(cold.film, { surfaceC: cold.targetC, airC: cold.airC, altitudeM, areaM2 })
  const hotWPerK = lossAtWPerK(hot.film, { surfaceC: hot.limitC, airC: hot.airC, altitudeM, areaM2 })
  const leastPowerW = fixed.leastPowerW({ lossWPerK: coldWPerK, targetC: cold.targetC, airC: cold.airC, ratedV, busV: cold.busV })
  const greatestPowerW = fixed.greatestPowerW({ lossWPerK: hotWPerK, limitC: hot.limitC, airC: hot.airC, ratedV, busV: hot.busV })
  return { leastPowerW, greatestPowerW, spanW: fixed.spanW({ leastPowerW, greatestPowerW }) }
}

interface Surface {
  readonly surfaceC: number
  readonly airC: number
  readonly altitudeM: number
  readonly areaM2: number
}

function lossAtWPerK(film: Plain<Film>, { surfaceC, airC, altitudeM, areaM2 }: Surface): number {
  return heating.lossWPerK({ filmWPerM2K: filmAt(film, { surfaceC, airC, altitudeM }), areaM2 })
}

/** Refuses a window that is shut. */
export function requireFixedPower({ leastPowerW, greatestPowerW }: Omit<ReturnType<typeof powerWindow>, 'spanW'>): void {
  if (leastPowerW <= greatestPowerW) return
  const [least, greatest] = [leastPowerW, greatestPowerW].map(power => `${Number(power.toPrecision(3))} W`)
  throw new NoAnswer(
    `no fixed power meets both: cold moving air asks for ${least} at least, hot still air allows ${greatest} at most; it needs a thermostat or an airflow interlock`,
    'fit a thermostat, or an interlock that takes the power off when the air stops'
  )
}
