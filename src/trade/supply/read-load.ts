import { Given } from '../../formula/given.ts'
import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { parseQuantity } from '../../quantity/parse-quantity.ts'
import { quoted } from '../../quantity/quoted.ts'
import { parseWithin } from '../../quantity/within.ts'
import type { LoadGiven, Priority } from './load.ts'

const ACCEPTED = 'a load as "heater=5.6 A" or "lights=9 A,40 %"'
const PRIORITIES: readonly Priority[] = ['essential', 'useful', 'comfort']

/** Reads `heater=5.6 A,50 %,comfort`: a name, a current, then how much of the time it is on and how much it is needed, either left out. */
export function readLoad(text: string): Outcome<LoadGiven> {
  const [name = '', rest, ...more] = text.split('=').map(part => part.trim())
  if (rest === undefined || more.length > 0 || name === '') return bad(quoted(text), ACCEPTED)
  const [current = '', ...extras] = rest.split(',').map(part => part.trim())
  const amps = parseWithin('current', current, { least: 0 })
  if (!amps.ok) return amps
  const priority = extras.find((word): word is Priority => (PRIORITIES as readonly string[]).includes(word)) ?? 'useful'
  const duties = extras.filter((word, i) => word !== priority || extras.indexOf(word) < i)
  if (duties.length > 1 || extras.length > 2) return bad(quoted(text), `${ACCEPTED}, or "lights=9 A,40 %,comfort"`)
  const duty = duties[0] === undefined ? good({ value: 100, low: 100, high: 100 }) : parseQuantity('percent', duties[0])
  if (!duty.ok) return duty
  const at = ['load', name]
  return good({
    name,
    priority,
    currentA: new Given(amps.value.value, { ...amps.value, at }),
    dutyPercent: new Given(duty.value.value, { ...duty.value, at })
  })
}
