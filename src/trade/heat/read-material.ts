import { Given } from '../../formula/given.ts'
import type { Source } from '../../formula/source.ts'
import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { nearest } from '../../quantity/near.ts'
import { parseQuantity } from '../../quantity/parse-quantity.ts'
import { quoted } from '../../quantity/quoted.ts'
import type { Figure } from './figure.ts'
import { MATERIAL_ALIASES, MATERIALS, materialNamed } from './materials.ts'

/** What a block is made of: a row of the table, or a specific heat alone. */
export interface BlockMaterial {
  readonly says: string
  readonly heatJPerKgK: Given
  /** Where the specific heat comes from; null where it was given. */
  readonly source: Source | null
  /** What the Biot number needs; null where the table has no conductivity. */
  readonly metal: { readonly densityKgPerM3: Given; readonly conductivityWPerMK: Given } | null
  /** Where it begins to melt; null where only its specific heat was given. */
  readonly meltsC: number | null
}

/** `aluminium`, `A380`, or a specific heat as `900 J/kgK`. */
export function readMaterial(text: string, at: readonly (string | number)[] = ['material']): Outcome<BlockMaterial> {
  const row = materialNamed(text)
  if (row === undefined) return /^\s*[+-]?\.?\d/.test(text) ? bySpecificHeat(text, at) : unknown(text)
  const { says, heatJPerKgK, densityKgPerM3, conductivityWPerMK, meltsC } = row
  return good({
    says,
    heatJPerKgK: fromTable(heatJPerKgK, at),
    source: heatJPerKgK.source,
    meltsC,
    metal:
      conductivityWPerMK === null
        ? null
        : { densityKgPerM3: fromTable(densityKgPerM3, at), conductivityWPerMK: fromTable(conductivityWPerMK, at) }
  })
}

function bySpecificHeat(text: string, at: Given['at']): Outcome<BlockMaterial> {
  const heat = parseQuantity('specific-heat', text)
  if (!heat.ok) return heat
  return good({
    says: 'a block of given specific heat',
    heatJPerKgK: new Given(heat.value.value, { ...heat.value, at }),
    source: null,
    meltsC: null,
    metal: null
  })
}

function fromTable({ value, low, high }: Figure, at: Given['at']): Given {
  return new Given(value, { low, high, at })
}

function unknown(text: string): Outcome<never> {
  const names = Object.keys(MATERIALS)
  const near = nearest(text.trim().slice(0, 40), [...names, ...Object.keys(MATERIAL_ALIASES)])
  return bad(quoted(text), `${names.join(', ')}, or a specific heat as "900 J/kgK"`, near)
}
