import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { nearest } from '../../quantity/near.ts'
import { quoted } from '../../quantity/quoted.ts'
import { CLASS_2, CLASS_5, ISO_6722 } from './metric-rows.ts'

/** A size of wire as the trade writes it. Gauge numbers count draws: 00 is -1, 000 is -2, 0000 is -3. */
export type WireSize =
  | { readonly system: 'awg'; readonly gaugeCount: number; readonly name: string }
  | { readonly system: 'mm2'; readonly sectionMm2: number; readonly name: string }

const THICKEST = -3
const THINNEST = 40
const ACCEPTED = 'a wire size, as "AWG 18", "AWG 2/0" or "0.75 mm2"'
const GAUGE = /^(?:awg\s*([\d/]+)|([\d/]+)\s*awg)$/i
const SECTION = /^(\d+(?:\.\d+)?|\.\d+)\s*mm2$/i
/** What people write for the two systems, by the system meant. */
const WORDS = { awg: 'AWG', gauge: 'AWG', ga: 'AWG', '#': 'AWG', mm2: 'mm2', mm: 'mm2', sqmm: 'mm2', qmm: 'mm2' } as const

const METRIC_SIZES: readonly number[] = [...new Set([...CLASS_5, ...CLASS_2, ...ISO_6722].map(([sectionMm2]) => sectionMm2))].sort(
  (a, b) => a - b
)

/** Reads `AWG 18`, `18 AWG`, `AWG 2/0`, `00 AWG`, `0.75 mm2`, `1.5mm²`. */
export function readWire(text: string): Outcome<WireSize> {
  const plain = text.trim().replace(/²|\^2/g, '2')
  const gauge = GAUGE.exec(plain)
  if (gauge !== null) return readGauge(gauge[1] ?? gauge[2]!, text)
  const section = SECTION.exec(plain)
  return section === null ? unreadable(plain, text) : readSection(Number(section[1]), text)
}

export function gaugeSize(gaugeCount: number): WireSize {
  return { system: 'awg', gaugeCount, name: `AWG ${gaugeCount < 0 ? `${1 - gaugeCount}/0` : gaugeCount}` }
}

export function sectionSize(sectionMm2: number): WireSize {
  return { system: 'mm2', sectionMm2, name: `${sectionMm2} mm2` }
}

function readGauge(digits: string, text: string): Outcome<WireSize> {
  const gaugeCount = gaugeOf(digits)
  if (gaugeCount !== undefined && gaugeCount >= THICKEST && gaugeCount <= THINNEST) return good(gaugeSize(gaugeCount))
  const near = gaugeCount === undefined ? undefined : gaugeSize(gaugeCount < THICKEST ? THICKEST : THINNEST).name
  return bad(`unknown wire size ${quoted(text)}`, 'AWG 4/0 to AWG 40', near)
}

/** `18` → 18, `0` → 0, `00` and `2/0` → -1. */
function gaugeOf(digits: string): number | undefined {
  const noughts = /^(0+)$/.exec(digits)?.[1]?.length ?? /^([1-9]\d*)\/0$/.exec(digits)?.[1]
  if (noughts !== undefined) return 1 - Number(noughts)
  return /^[1-9]\d*$/.test(digits) ? Number(digits) : undefined
}

function readSection(sectionMm2: number, text: string): Outcome<WireSize> {
  if (METRIC_SIZES.includes(sectionMm2)) return good(sectionSize(sectionMm2))
  const [below, above] = [METRIC_SIZES.findLast(size => size < sectionMm2), METRIC_SIZES.find(size => size > sectionMm2)]
  const sizes = [below, above].filter(size => size !== undefined)
  const near = sizes.reduce((a, b) => (a * b < sectionMm2 ** 2 ? b : a))
  const accepted = `${sizes.map(size => sectionSize(size).name).join(' or ')}, the nearest ${sizes.length > 1 ? 'sizes' : 'size'} made`
  return bad(`unknown wire size ${quoted(text)}`, accepted, sectionSize(near).name)
}

function unreadable(plain: string, text: string): Outcome<WireSize> {
  if (/^\d+,\d+/.test(plain)) return bad(`decimal comma in ${quoted(text)}`, 'a decimal point', plain.replace(',', '.'))
  const [, number] = /([\d./]+)/.exec(plain) ?? []
  const word = plain.replace(/[\d./\s]/g, '') || (/mm2/i.test(plain) ? 'mm2' : '')
  if (number === undefined) return bad(`unknown wire size ${quoted(text)}`, ACCEPTED)
  if (word === '') return bad(`wire size ${quoted(text)} without a system`, bothSystems(number))
  const known = nearest(`${word}${/mm\^?2$/i.test(plain) ? '2' : ''}`, Object.keys(WORDS)) as keyof typeof WORDS | undefined
  if (known === undefined) return bad(`unknown wire size ${quoted(text)}`, ACCEPTED)
  return bad(`unknown wire size ${quoted(text)}`, ACCEPTED, WORDS[known] === 'AWG' ? `AWG ${number}` : `${number} mm2`)
}

/** `18` may be either; `2/0` is no section and `0.75` no gauge. */
function bothSystems(number: string): string {
  if (/^0+$|\//.test(number)) return `"AWG ${number}"`
  return number.includes('.') ? `"${number} mm2"` : `"AWG ${number}" or "${number} mm2"`
}
