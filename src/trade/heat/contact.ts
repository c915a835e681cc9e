import { SOURCES } from '../../formula/source.ts'
import { type Figure, figure, span } from './figure.ts'

const { 'incropera-contact': incropera, 'lienhard-contact': lienhard } = SOURCES

/** A joint between two metals pressed together. No figure for a thread in a hole was found: these are for flat faces. */
export interface Contact {
  readonly says: string
  readonly between: 'bare' | 'compound'
  readonly contactM2KPerW: Figure
}

export const CONTACTS = {
  'aluminium-bare': {
    says: 'aluminium on aluminium, 10 µm rough, air between, 100 kPa',
    between: 'bare',
    contactM2KPerW: figure(2.75e-4, incropera)
  },
  'aluminium-oil': {
    says: 'aluminium on aluminium, 10 µm rough, silicone oil between, 100 kPa',
    between: 'compound',
    contactM2KPerW: figure(0.525e-4, incropera)
  },
  'aluminium-grease': {
    says: 'aluminium on aluminium with silicone grease, 100 kPa',
    between: 'compound',
    contactM2KPerW: figure(0.07e-4, incropera)
  },
  // A conductance of 2200 to 12000 W/(m²·K) in the table.
  'aluminium-pressed': {
    says: 'aluminium on aluminium, moderate pressure, usual finish',
    between: 'bare',
    contactM2KPerW: span(1 / 12000, 1 / 2200, lienhard)
  },
  // A conductance of 10000 to 25000 W/(m²·K) in the table.
  'copper-pressed': {
    says: 'copper on copper, moderate pressure, usual finish',
    between: 'bare',
    contactM2KPerW: span(1 / 25000, 1 / 10000, lienhard)
  },
  'brass-soldered': {
    says: 'brass on brass, 15 µm of tin solder',
    between: 'compound',
    contactM2KPerW: span(0.025e-4, 0.14e-4, incropera)
  },
  epoxy: {
    says: 'small part on aluminium, 0.02 mm of epoxy',
    between: 'compound',
    contactM2KPerW: span(0.2e-4, 0.9e-4, incropera)
  }
} as const satisfies Record<string, Contact>

export type ContactName = keyof typeof CONTACTS
