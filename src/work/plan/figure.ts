import type { Given } from '../../formula/given.ts'
import { type Shown, shownFor } from '../../quantity/digits.ts'
import { showMetricAndInch, showNumber, showSpread } from '../../quantity/show.ts'
import { type UnitName, unitOf } from '../../quantity/units.ts'
import type { Result } from '../../report/answer.ts'
import type { Figure } from '../../report/plan/plan.ts'

type Ends = Pick<Figure, 'value' | 'low' | 'high'>

/** A number of the job. */
export function ofGiven(name: UnitName, says: string, { value, low, high }: Given, shown: Shown = shownFor(name)): Figure {
  const moved = low !== high
  return figure(says, { value, low: moved ? low : null, high: moved ? high : null }, { unit: unitOf(name), shown })
}

/** A number that was worked out; null where it has no answer. */
export function ofResult(result: Result | undefined, shown?: Shown, name = result?.name): Figure | null {
  if (result === undefined || typeof result.value !== 'number') return null
  const { value, low, high, unit } = result
  return figure(name ?? result.name, { value, low, high }, { unit, shown: shown ?? result.shown })
}

/** The low end alone, of a number that is set or counted: what is right at the worst end. */
export function atLow(result: Result | undefined, shown: Shown, name: string): Figure | null {
  if (result === undefined || typeof result.value !== 'number') return null
  return figure(name, { value: result.low ?? result.value, low: null, high: null }, { unit: result.unit, shown })
}

/** A number that stands by itself. */
export function ofNumber(name: UnitName, says: string, value: number, shown: Shown = shownFor(name)): Figure {
  return figure(says, { value, low: null, high: null }, { unit: unitOf(name), shown })
}

/** The same number in words of its own. */
export function written(figure: Figure, text: string): Figure {
  return { ...figure, text }
}

/** `24.50 mm (0.9645 in)`: where a shop uses both. */
export function inBoth(figure: Figure, shown: Shown): Figure {
  return { ...figure, text: showMetricAndInch(figure.value, shown) }
}

function figure(name: string, ends: Ends, { unit, shown }: { readonly unit: string; readonly shown: Shown }): Figure {
  const turns = shown === 'turns' || shown === 'turns-down' ? 'turns' : unit
  const number = showNumber(ends.value, shown)
  const { low, high } = ends
  const band = low === null || high === null ? '' : `${showSpread(low, high, shown)} ${unit}`.trim()
  return { name, ...ends, unit, text: turns === '' ? number : `${number} ${turns}`, band }
}

/** What a meter should show. */
export function ofReading(name: string, { value, low, high }: Ends, unit: string): Figure {
  return figure(name, { value, low, high }, { unit, shown: 'reading' })
}

/** A number that was worked out, not yet a result. */
export function ofBounded(
  name: UnitName,
  says: string,
  { value, low, high }: Ends & { readonly low: number; readonly high: number }
): Figure {
  const moved = low !== high
  return figure(says, { value, low: moved ? low : null, high: moved ? high : null }, { unit: unitOf(name), shown: shownFor(name) })
}

/** `24.00 mm (23.70 to 24.30 mm)`. */
export function withBand({ text, band }: Figure): string {
  return band === '' ? text : `${text} (${band})`
}

/** Not a number where there is no such result. */
export function leastOf(result: Result | undefined): number {
  return typeof result?.value === 'number' ? (result.low ?? result.value) : Number.NaN
}
