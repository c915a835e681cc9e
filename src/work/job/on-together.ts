import { type JobItem, loadName, markedItem } from '../../job/circuit-names.ts'
import { thingIn } from '../../job/thing-words.ts'
import { spread } from '../../trade/circuit/spread.ts'
import type { Guards } from './circuit-guards.ts'
import { type JobCircuit, type JobLoad, namedRuns } from './circuit-wiring.ts'

/**
 * Heaters between the same places, no switch of their own on the way, are on together, unless one is said to be off at
 * times. Any other load may be off while one of them is on.
 */
export function onTogether(circuit: JobCircuit, { wiring }: Guards, load: JobLoad): readonly string[] {
  if (load.heater === null) return [loadName(load)]
  const switched = switchRuns(circuit).map(({ id }) => id)
  const joins = wiring.runs.filter(({ id }) => !switched.includes(id))
  const [feed, back] = [spread(load.from, joins), spread(load.to, joins)]
  const beside = (one: JobLoad) => one.heater !== null && one.on.low >= 100 && feed.has(one.from) && back.has(one.to)
  return circuit.loads.filter(one => one === load || beside(one)).map(loadName)
}

/** Runs in which something stands that takes the power off, and what it is. */
export function switchRuns(circuit: JobCircuit): readonly { readonly id: string; readonly items: readonly string[] }[] {
  return namedRuns(circuit).flatMap(({ id, run: { through } }) => {
    const items = through.filter(takesOff).map(item => markedItem(item).what)
    return items.length === 0 ? [] : [{ id, items }]
  })
}

/** A breaker may be opened by hand; a fuse is no switch. */
function takesOff(item: JobItem): boolean {
  const { what, does } = markedItem(item)
  return does === 'switches' || BY_HAND.test(thingIn(what))
}

const BY_HAND = /\b(breaker|isolator|contactor|disconnector)\b/i
