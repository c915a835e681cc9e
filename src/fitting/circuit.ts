import type { Given } from '../formula/given.ts'
import type { Conductor } from '../trade/circuit/conductor.ts'
import type { LoadWay } from '../trade/circuit/load-way.ts'
import type { StyleId } from '../trade/circuit/protection-style.ts'
import type { SwitchLoad } from '../trade/circuit/switch-factor.ts'
import type { PracticeName } from '../trade/practice-names.ts'

/** How a wire lies, where that was told. */
export interface WireLies {
  readonly insulationC: Given
  readonly ambientC: Given
  readonly bundleCount: Given
  readonly altitudeM: Given
  readonly practice: PracticeName
}

export interface RunWire {
  readonly of: 'wire'
  readonly conductor: Conductor
  /** One: assumed where nobody told how a gauge is made up, which stranded may resist a quarter more. */
  readonly strandFactor: Given
  /** Of a piece of a run: where it ends, along that. */
  readonly lengthM: Given
  /** Of a piece of a run: where it begins, counted as its length is. */
  readonly beginsM: Given | null
  readonly conductorC: Given
  readonly lies: WireLies | null
  /** Whether its temperature was given, or follows its current. */
  readonly warmth: 'given' | 'own'
}

/** What a run is made of: wire of a length, or a resistance that was measured or assumed. */
export type RunPart = RunWire | { readonly of: 'joint'; readonly jointOhm: Given }

export interface Run {
  readonly id: string
  readonly from: string
  readonly to: string
  readonly parts: readonly RunPart[]
  readonly state: 'closed' | 'open'
  /** No: threads beside another way. They count neither for drop nor for power, but where a fault may go. */
  readonly counted: 'yes' | 'no'
}

/** How the resistance of a heater follows its temperature: its rating holds where it is hot. */
export interface Follows {
  readonly resistanceChangePerK: Given
  readonly hotC: Given
}

/** What a load takes of its voltage; what a heater tells of its temperature is null where nobody told it. */
export type Takes =
  | { readonly by: 'rated'; readonly powerW: Given; readonly ratedV: Given; readonly follows: Follows | null }
  | { readonly by: 'resistance'; readonly resistanceOhm: Given }
  | { readonly by: 'current'; readonly currentA: Given }
  | { readonly by: 'power'; readonly powerW: Given }

export interface FittedLoad {
  readonly name: string
  readonly from: string
  readonly to: string
  readonly takes: Takes
  readonly kind: SwitchLoad
  /** Temperature that it is switched on at. */
  readonly startC: Given
  /** Current at switch-on over the steady one, and how long it lasts: null where it takes no more than that. All of it null where it is not known. */
  readonly inrush: { readonly times: Given; readonly lastsS: Given | null; readonly basis: 'given' | 'its kind' | 'assumed' } | null
  /** Null where no source by itself drives a current through it: then nothing tells what is lost on its way. */
  readonly way: LoadWay | null
}

export interface FittedSource {
  readonly id: string
  /** As the job names it. */
  readonly what: string
  readonly from: string
  readonly to: string
  readonly sourceV: Given
  readonly insideOhm: Given
}

export interface FittedProtector {
  readonly name: string
  /** The run it stands in. */
  readonly run: string
  readonly style: StyleId
  readonly ratingA: Given
  readonly placeC: Given
  /** Wire of its run between the point that the run starts at and it; null where nobody said. */
  readonly alongM: Given | null
  /** Printed on it for the voltage of the bus; null where what is published of its style counts. */
  readonly breakingA: Given | null
  /** Loads behind it. */
  readonly loads: readonly string[]
  /** The wire that it is held against: of all behind it the one that stands least. Null where there is none. */
  readonly wire: RunWire | null
  readonly holds: Holding
}

/** What a protector holds, beside the wire itself. */
export interface Holding {
  /** The run of that wire. */
  readonly run: string | null
  /** What feeds that wire at once with it. */
  readonly beside: readonly { readonly name: string; readonly style: StyleId; readonly ratingA: Given; readonly placeC: Given }[]
  /** Others beside it, of which rating or style is not given. */
  readonly unknown: readonly string[]
  /** Smaller ones in the same way, which hold that wire before it does. */
  readonly backedBy: readonly string[]
}

export interface FittedSwitch {
  readonly name: string
  readonly run: string
  /** Loads behind it; none where it is not known which. */
  readonly loads: readonly string[]
}

/** A short across a load, or at the end of a run: a protector that should open it, and the wires through which it flows. */
export interface FittedShort {
  readonly load: string | null
  /** Null where no source by itself drives a current there. */
  readonly at: { readonly from: string; readonly to: string } | null
  readonly protector: string | null
  /** All that have to open it, itself among them; none where it is another that does. */
  readonly group: readonly string[]
  readonly runs: readonly string[]
  /** Which runs are open then; all others are closed, however they are drawn. */
  readonly opened: readonly string[]
  /** Together: sources that are not so as drawn, as what joins them is drawn open. */
  readonly sources: 'apart' | 'together'
}

/** The circuit of a job: every source, run, load and protector. */
export interface CircuitFit {
  /** The node that the source feeds, and the 0 V node. */
  readonly bus: string
  readonly ground: string
  readonly busV: Given
  readonly insideOhm: Given
  /** Stiff: nobody gave what is inside it, so nothing is said of its greatest current. */
  readonly inside: 'known' | 'stiff'
  readonly others: readonly FittedSource[]
  readonly runs: readonly Run[]
  readonly loads: readonly FittedLoad[]
  readonly protectors: readonly FittedProtector[]
  readonly switches: readonly FittedSwitch[]
  readonly shorts: readonly FittedShort[]
  /** By the runs that are open: positions of the switches in which most flows into a short. */
  readonly closedTogether: readonly (readonly string[])[]
  /** Points whose voltage against 0 V is a ground shift. */
  readonly groundPoints: readonly string[]
}
