import { SOURCES } from '../../formula/source.ts'
import { type Figure, figure } from './figure.ts'

const nadca = SOURCES.nadca
const { 'callister-b': callister, 'incropera-a1': incropera, 'materials-site': site, 'caster-page': caster } = SOURCES

/** What a block is made of, as far as warming it goes. Null: no figure was found. */
export interface Material {
  readonly says: string
  readonly heatJPerKgK: Figure
  readonly densityKgPerM3: Figure
  readonly conductivityWPerMK: Figure | null
  /** Where it begins to melt (memory, handbooks of metals); of aluminium not named, the lowest of common casting alloys. */
  readonly meltsC: number
}

export const MATERIALS = {
  aluminium: {
    says: 'aluminium, alloy not named',
    heatJPerKgK: figure(900, SOURCES['aluminium-heat']),
    densityKgPerM3: figure(2700, SOURCES['aluminium-heat']),
    conductivityWPerMK: null,
    meltsC: 515
  },
  a380: {
    says: 'die-cast aluminium A380',
    heatJPerKgK: figure(963, nadca),
    densityKgPerM3: figure(2710, nadca),
    conductivityWPerMK: figure(96.2, nadca),
    meltsC: 540
  },
  '380': {
    says: 'die-cast aluminium 380',
    heatJPerKgK: figure(963, nadca),
    densityKgPerM3: figure(2740, nadca),
    conductivityWPerMK: figure(96.2, nadca),
    meltsC: 540
  },
  a356: {
    says: 'cast aluminium A356-T6',
    heatJPerKgK: figure(963, callister),
    densityKgPerM3: figure(2690, SOURCES['magnesium-presentation']),
    conductivityWPerMK: figure(159, SOURCES['magnesium-presentation']),
    meltsC: 555
  },
  'zinc-alloy-3': {
    says: 'zinc die-casting alloy 3',
    heatJPerKgK: figure(419, nadca),
    densityKgPerM3: figure(6600, nadca),
    conductivityWPerMK: figure(113, nadca),
    meltsC: 381
  },
  az91d: {
    says: 'magnesium AZ91D',
    heatJPerKgK: figure(1050, caster),
    densityKgPerM3: figure(1810, site),
    // Four tables print 51, 72, 72.7 and 78.
    conductivityWPerMK: figure(72.7, site, { low: 51, high: 78 }),
    meltsC: 470
  },
  'grey-iron': {
    says: 'grey cast iron',
    // Tables print 490 and 544, 7300 and 7500.
    heatJPerKgK: figure(544, callister, { low: 490 }),
    densityKgPerM3: figure(7300, callister, { high: 7500 }),
    conductivityWPerMK: figure(46, site),
    meltsC: 1130
  },
  'steel-1020': {
    says: 'steel 1020',
    heatJPerKgK: figure(486, callister),
    densityKgPerM3: figure(7850, callister),
    conductivityWPerMK: figure(51.9, callister),
    meltsC: 1470
  },
  'stainless-316': {
    says: 'stainless steel 316',
    heatJPerKgK: figure(500, callister),
    densityKgPerM3: figure(8000, callister),
    conductivityWPerMK: figure(14, incropera),
    meltsC: 1375
  },
  'brass-c36000': {
    says: 'free-cutting brass C36000',
    heatJPerKgK: figure(380, callister),
    densityKgPerM3: figure(8500, callister),
    conductivityWPerMK: figure(115, callister),
    meltsC: 885
  },
  'copper-c11000': {
    says: 'copper C11000',
    heatJPerKgK: figure(385, callister),
    densityKgPerM3: figure(8890, callister),
    conductivityWPerMK: figure(398, incropera),
    meltsC: 1065
  }
} as const satisfies Record<string, Material>

export type MaterialName = keyof typeof MATERIALS

/** What people say for a row of the table. */
export const MATERIAL_ALIASES = {
  aluminum: 'aluminium',
  'a356-t6': 'a356',
  'magnesium-az91d': 'az91d',
  'cast-iron': 'grey-iron',
  'gray-iron': 'grey-iron',
  steel: 'steel-1020',
  stainless: 'stainless-316',
  brass: 'brass-c36000',
  copper: 'copper-c11000'
} as const satisfies Record<string, MaterialName>

/** The row of a name as people write it; undefined where none bears it. */
export function materialNamed(text: string): Material | undefined {
  const name = text
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, '-')
  const rows: Readonly<Record<string, Material>> = MATERIALS
  const aliases: Readonly<Record<string, MaterialName>> = MATERIAL_ALIASES
  return Object.hasOwn(rows, name) ? rows[name] : Object.hasOwn(aliases, name) ? MATERIALS[aliases[name]!] : undefined
}
