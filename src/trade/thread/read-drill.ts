import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { parseQuantity } from '../../quantity/parse-quantity.ts'
import { quoted } from '../../quantity/quoted.ts'
import { DRILL_SETS, type Drill, type DrillSet, sameSize } from './drill.ts'
import { drillsOf } from './drill-sets.ts'

/** A drill of a set, or a size that no set has. */
export type AskedDrill = Drill | { readonly set: null; readonly name: string; readonly diameterMm: number }

const FORM = 'a drill as #7, F, 7/16, "10.2 mm" or "0.201 in"'
const LONGEST = 40

/** Reads `#7`, `No. 7`, `F`, `7/16`, `7/16 in`, `10.2 mm`, `0.201 in`. */
export function readDrill(text: string): Outcome<AskedDrill> {
  const words = text.trim().replace(/\s+/g, ' ')
  if (words === '' || words.length > LONGEST) return bad(`${quoted(text)} is no drill`, FORM)
  return readNumber(words) ?? readLetter(words) ?? readFraction(words) ?? readBare(words) ?? readSize(words)
}

type Read = Outcome<AskedDrill> | undefined

function readNumber(words: string): Read {
  const digits = /^(?:#|no\.? ?|number )(\d+)$/i.exec(words)?.[1]
  if (digits === undefined) return undefined
  const drills = drillsOf('number')
  const drill = drills.find(({ name }) => name === `#${Number(digits)}`)
  return drill === undefined ? bad(`no number drill #${Number(digits)}`, '#1 to #80', Number(digits) < 1 ? '#1' : '#80') : good(drill)
}

function readLetter(words: string): Read {
  const letter = /^(?:letter )?([a-z])$/i.exec(words)?.[1]
  const drill = drillsOf('letter').find(({ name }) => name === letter?.toUpperCase())
  return drill && good(drill)
}

function readFraction(words: string): Read {
  const parts = /^(?:(\d+)[- ])?(\d+)\/(\d+) ?(?:in|inch|")?$/i.exec(words)
  if (parts === null) return undefined
  const [, whole = '0', over, under] = parts
  const sixtyFourths = 64 * (Number(whole) + Number(over) / Number(under))
  const drills = drillsOf('fraction')
  const drill = drills[sixtyFourths - 1]
  if (drill !== undefined) return good(drill)
  const near = drills[Math.min(Math.max(1, Math.round(sixtyFourths)), drills.length) - 1]
  return bad(`no fraction drill ${words}`, `64ths of an inch up to ${drills.at(-1)?.name}`, near?.name)
}

/** `7` may be #7 or 7 mm. */
function readBare(words: string): Read {
  if (!/^\d*\.?\d+$/.test(words)) return undefined
  const number = drillsOf('number').find(({ name }) => name === `#${words}`)
  const meanings = [...(number === undefined ? [] : [number.name]), `${words} mm`, ...(number === undefined ? [`${words} in`] : [])]
  return bad(`"${words}" does not say which drill`, meanings.join(' or '))
}

function readSize(words: string): Outcome<AskedDrill> {
  const read = parseQuantity('length', words)
  if (!read.ok) return bad(read.fault.found, FORM, read.fault.near)
  const { value: diameterMm, low, high } = read.value
  if (low !== high) return bad(`${quoted(words)} has bounds`, 'one size of drill')
  const end = beyond(diameterMm)
  if (end !== undefined) return bad(`no drill of ${quoted(words)} in any set`, 'a size from 0.2 mm to 50 mm', end)
  return good(drillIn(orderFor(words), diameterMm) ?? { set: null, name: `${Number(diameterMm.toFixed(4))} mm`, diameterMm })
}

/** The first of several sets that has the size gives it. */
function drillIn(sets: readonly DrillSet[], diameterMm: number): Drill | undefined {
  for (const set of sets) {
    const drill = drillsOf(set).find(one => sameSize(one.diameterMm, diameterMm))
    if (drill !== undefined) return drill
  }
  return undefined
}

/** The end of the sets, where the size lies beyond it. */
function beyond(diameterMm: number): string | undefined {
  const drills = drillsOf('metric')
  const [least, greatest] = [drills[0]!, drills.at(-1)!]
  return diameterMm < least.diameterMm ? least.name : diameterMm > greatest.diameterMm ? greatest.name : undefined
}

/** One size may be in several sets: who asks in inches means an inch drill. */
function orderFor(words: string): readonly DrillSet[] {
  return /mm$/i.test(words) ? DRILL_SETS : ['fraction', 'number', 'letter', 'metric']
}
