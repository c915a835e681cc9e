/** What the circuit is made of, beside its network: which element is what, and what else it might be by mistake. */
export interface Drawn {
  readonly ground: string
  /** That of the bus first. */
  readonly sources: readonly DrawnSource[]
  readonly runs: readonly DrawnRun[]
  readonly loads: readonly DrawnLoad[]
}

export interface DrawnSource {
  readonly id: string
  /** The bus it feeds, or its own name. */
  readonly name: string
  /** Its minus. */
  readonly from: string
  readonly to: string
}

export interface DrawnRun {
  readonly id: string
  readonly from: string
  readonly to: string
  /** Null where the run is a joint, a fuse or a switch alone. */
  readonly wire: DrawnWire | null
  /** Fuses and switches in it, by their marks. */
  readonly through: readonly string[]
  /** Whether a fuse or a breaker is among them. */
  readonly protects: boolean
}

export interface DrawnWire {
  readonly name: string
  readonly wireOhm: number
  /** Sizes of the same kind that might have been taken for it. */
  readonly others: readonly { readonly name: string; readonly ohmRatio: number }[]
}

export interface DrawnLoad {
  readonly id: string
  /** The hole whose heater it is, or its own name. */
  readonly name: string
  readonly from: string
  readonly to: string
}

/** `panel to switched`, as a reading is written. */
export function pointText({ red, black }: { readonly red: string; readonly black: string }): string {
  return `${red} to ${black}`
}
