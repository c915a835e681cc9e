import { Given } from '../../formula/given.ts'
import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { quoted } from '../../quantity/quoted.ts'
import { parseWithin } from '../../quantity/within.ts'

export interface Inrush {
  readonly currentA: Given
  readonly timeS: Given
}

/** Reads `20 A,0.5 s`: the current at switch-on, and how long it lasts. */
export function readInrush(text: string): Outcome<Inrush> {
  const [current = '', time, ...more] = text.split(',')
  if (time === undefined || more.length > 0) return bad(`${quoted(text)} for an inrush`, 'a current and a time, as "20 A,0.5 s"')
  const [amps, seconds] = [parseWithin('current', current, { least: 0 }), parseWithin('time', time)]
  if (!amps.ok) return amps
  if (!seconds.ok) return seconds
  const at = ['inrush']
  return good({
    currentA: new Given(amps.value.value, { ...amps.value, at }),
    timeS: new Given(seconds.value.value, { ...seconds.value, at })
  })
}
