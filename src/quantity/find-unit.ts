import { type Scale, scaleOf } from './conversion.ts'
import { KIND_NAMES, type Kind, rowOf } from './kinds.ts'
import { QuickRatio } from './quick-ratio.ts'
import { FOREIGN } from './spellings/foreign.ts'
import { unitKey } from './unit-key.ts'
import type { UnitTable } from './unit-row.ts'

/** A unit found in the table of a kind. */
export interface Unit {
  readonly label: string
  /** True where the number needs no conversion. */
  readonly house: boolean
  readonly scale: Scale
  /** The same of a scale that begins at nought. */
  readonly quick: QuickRatio | undefined
}

interface Index {
  readonly symbols: Map<string, Unit>
  readonly words: ReadonlyMap<string, Unit>
}

const indexes = new Map<Kind, Index>()

/** The unit that a word names, where it is one of this kind. */
export function findUnit(kind: Kind, text: string): Unit | undefined {
  const { symbols, words } = indexOf(kind)
  const direct = symbols.get(text)
  if (direct !== undefined) return direct
  const key = unitKey(text)
  const found = symbols.get(key) ?? words.get(key.toLowerCase())
  // A spelling is met again and again; the cap keeps odd ones from piling up.
  if (found !== undefined && symbols.size < MOST_SPELLINGS) symbols.set(text, found)
  return found
}

const MOST_SPELLINGS = 500

/** What a unit measures, as a person calls it, whatever the kind. */
export function measureOf(text: string): string | undefined {
  const kind = KIND_NAMES.find(name => findUnit(name, text) !== undefined)
  if (kind !== undefined) return rowOf(kind).says
  const key = unitKey(text)
  return Object.keys(FOREIGN).find(says => FOREIGN[says]!.some(spelling => spelling === text || unitKey(spelling) === key))
}

/** Every spelling of every unit of a table, as it stands there. */
export function spellingsOf(units: UnitTable): readonly string[] {
  return Object.entries(units).flatMap(([label, { as = [], words = [] }]) => [label, ...as, ...words])
}

function indexOf(kind: Kind): Index {
  const known = indexes.get(kind)
  if (known !== undefined) return known
  const made = indexed(kind)
  indexes.set(kind, made)
  return made
}

function indexed(kind: Kind): Index {
  const row = rowOf(kind)
  const symbols = new Map<string, Unit>()
  const words = new Map<string, Unit>()
  for (const [label, { as = [], words: anyCase = [] }] of Object.entries(row.units)) {
    const unit = unitOf(kind, label)
    for (const symbol of [label, ...as]) symbols.set(symbol, unit).set(unitKey(symbol), unit)
    for (const word of anyCase) words.set(unitKey(word).toLowerCase(), unit)
  }
  if (row.pure === true) symbols.set('', unitOf(kind, ''))
  return { symbols, words }
}

function unitOf(kind: Kind, label: string): Unit {
  const { house, pure } = rowOf(kind)
  let quick: QuickRatio | undefined
  return {
    label,
    house: label === house || pure === true,
    get scale() {
      return scaleOf(kind, label)
    },
    get quick() {
      const { times, plus } = scaleOf(kind, label)
      if (plus.top === 0n) quick ??= new QuickRatio(times)
      return quick
    }
  }
}
