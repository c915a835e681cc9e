import { Given } from '../../formula/given.ts'
import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { parseQuantity } from '../../quantity/parse-quantity.ts'
import { quoted } from '../../quantity/quoted.ts'

/** One tap of the sequence. */
export interface Tap {
  readonly name: string
  /** Threads cut away at its front, in pitches. */
  readonly chamferTurns: Given
  /** How far a front centre reaches beyond the smallest thread of the chamfer, where the tap has one. */
  readonly centreMm: Given | null
}

/** Taken where none is given (memory). Makers print taper 7 to 10, second 3 to 5, bottoming 1 to 2 pitches (read-secondary). */
export const USUAL_TAPS = 'taper:8,second:4,bottoming:1.5'

const ACCEPTED = `taps as NAME:CHAMFER in the order of use, as "${USUAL_TAPS}", with a front centre NAME:CHAMFER:CENTRE, as "second:4:3mm"`
const NAME = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/
const CHAMFER = /^\d+(\.\d+)?$/

/** Where the words stood, and why they were assumed where nobody wrote them. */
export interface TapsFrom {
  readonly at?: Given['at']
  readonly assumed?: string | undefined
}

/** Reads `taper:8,second:4:3mm`: names, chamfers in pitches, each shorter than the one before, and front centres where there are any. */
export function readTaps(text: string, from: TapsFrom = {}): Outcome<readonly Tap[]> {
  const taps: Tap[] = []
  for (const part of text.split(',')) {
    const tap = readTap(part.trim(), from)
    if (!tap.ok) return tap
    const fault = misplaced(taps, tap.value)
    if (fault !== undefined) return fault
    taps.push(tap.value)
  }
  return good(taps)
}

function readTap(part: string, { at, assumed }: TapsFrom): Outcome<Tap> {
  const [name = '', chamfer, centre, ...more] = part.split(':').map(word => word.trim())
  if (chamfer === undefined || more.length > 0) return bad(`${quoted(part)} among the taps`, ACCEPTED)
  if (!NAME.test(name)) return bad(`tap name ${quoted(name)}`, 'a name of small letters, digits and hyphens', nearName(name))
  if (!CHAMFER.test(chamfer)) return bad(`chamfer ${quoted(chamfer)} of the tap ${name}`, 'a number of pitches, as "4" or "1.5"')
  const centreMm = readCentre(centre, at)
  if (!centreMm.ok) return bad(`front centre ${quoted(centre ?? '')} of the tap ${name}`, centreMm.fault.accepted, centreMm.fault.near)
  const chamferTurns = new Given(Number(chamfer), at === undefined ? { assumed } : { assumed, at })
  return good({ name, chamferTurns, centreMm: centreMm.value })
}

function readCentre(text: string | undefined, at: Given['at'] = []): Outcome<Given | null> {
  if (text === undefined) return good(null)
  const length = parseQuantity('length', text)
  return length.ok ? good(new Given(length.value.value, { low: length.value.low, high: length.value.high, at })) : length
}

function nearName(name: string): string | undefined {
  const near = name.toLowerCase().replace(/[\s_]+/g, '-')
  return NAME.test(near) ? near : undefined
}

function misplaced(before: readonly Tap[], { name, chamferTurns }: Tap) {
  const last = before.at(-1)
  if (before.some(tap => tap.name === name)) return bad(`two taps named ${name}`, 'a name of its own for each tap')
  if (last === undefined || chamferTurns.value < last.chamferTurns.value) return undefined
  return bad(
    `tap ${name} with a chamfer of ${chamferTurns.value} pitches after ${last.name} with ${last.chamferTurns.value}`,
    'each tap with a shorter chamfer than the one before it'
  )
}
