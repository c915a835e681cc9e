import type { Given, Plain } from '../../formula/given.ts'
import type { Branch, Element, Flow } from './network.ts'

/** Electronics that takes the same power at any voltage. */
export interface PowerLoad extends Branch {
  readonly kind: 'power'
  readonly powerW: Given
}

/** A load whose resistance follows its own temperature. */
export interface WarmingLoad extends Branch {
  readonly kind: 'warming'
  /** At 20 °C. */
  readonly coldOhm: Given
  readonly resistanceChangePerK: Given
  readonly ambientC: Given
  /** How far it rises at that power. */
  readonly hotRiseK: Given
  readonly hotW: Given
}

/** A wire that follows its own temperature, with the joints in its run. */
export interface WarmingWire extends Branch {
  readonly kind: 'wire'
  /** At 20 °C, the whole run. */
  readonly coldOhm: Given
  readonly jointsOhm: Given
  /** Where it lies. */
  readonly ambientC: Given
  /** What brings it to which conductor temperature there. */
  readonly ampacityA: Given
  readonly ratedC: Given
}

/** A switch, a fuse that has opened, a thermostat: what works it is no part of the circuit. */
export interface Contact extends Branch {
  readonly kind: 'contact'
  readonly state: 'open' | 'closed'
  readonly contactOhm: Given
}

/** The contact of a relay: its coil is a resistor or warming load of the same circuit. */
export interface RelayContact extends Branch {
  readonly kind: 'relay'
  readonly coil: string
  readonly pullInA: Given
  readonly dropOutA: Given
  readonly atRest: 'open' | 'closed'
  readonly contactOhm: Given
}

export type Part = Element | PowerLoad | WarmingLoad | WarmingWire | Contact | RelayContact

export interface Circuit {
  /** The node of 0 V. */
  readonly ground: string
  readonly parts: readonly Part[]
}

export type PlainPart = Plain<Part>
export type PlainCircuit = Plain<Circuit>
export type PartOf<K extends Part['kind']> = Extract<PlainPart, { readonly kind: K }>

export interface Settled {
  readonly nodeV: { readonly [node: string]: number }
  readonly flows: { readonly [id: string]: Flow }
  /** Of every wire and load that follows its own temperature. */
  readonly partC: { readonly [id: string]: number }
  /** Of every relay. */
  readonly contacts: { readonly [id: string]: 'open' | 'closed' }
}
