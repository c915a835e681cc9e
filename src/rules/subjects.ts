import type { circuitFit } from '../fitting/circuit-fit.ts'
import type { holeFit } from '../fitting/hole-fit.ts'
import type { jointFit } from '../fitting/joint-fit.ts'
import type { Bounded, BoundsOf } from '../formula/bounds.ts'
import type { Given } from '../formula/given.ts'
import type { Span } from '../quantity/parse-quantity.ts'
import type { StatedFault } from '../trade/circuit/switched-walk.ts'
import type { WallNeeds } from '../trade/hole/wall.ts'
import type { Wide } from '../trade/hole/wide.ts'
import type { CastMetal } from '../trade/joint/casting-alloys.ts'
import type { BodyUnknown } from './body-doubts.ts'
import type { Finding } from './finding.ts'
import type { Lack, Limit } from './judge.ts'
import type { UnknownWire, Unsure } from './missing.ts'
import type { ThreadPlace } from './thread-doubts.ts'

type Fitted = BoundsOf<ReturnType<typeof holeFit>>

/** What the rules of a hole, and of the part in it, are asked about. */
export type HoleSubject = Fitted['hole'] & {
  readonly runOut: NonNullable<Fitted['seat']>['runOut'] | null
  readonly floor: NonNullable<Fitted['seat']>['floor']
  readonly rim: NonNullable<Fitted['seat']>['rim']
  readonly leastFloor: Limit | null
  readonly engagedMm: Bounded | null
  readonly pitchMm: number
  readonly tapClearMm: Given
  readonly stack: readonly Given[]
  readonly crushMm: Given
  readonly drillMm: Bounded
  readonly alloy: string | null
  readonly thread: string
  readonly majorMm: number
  readonly wallNeeds: WallNeeds
  readonly wide: Wide | null
  readonly foundLowMm: number
  readonly foundHighMm: number
  readonly truingDrill: string | null
  readonly waysOut: readonly string[]
  readonly minor: { readonly minMm: number; readonly maxMm: number }
  readonly cardThreads: 'dry' | 'lubricated' | null
  readonly threadsWith: string | null
  readonly settingNm: Bounded | null
  readonly tool: Span | null
}

/** What the rules of a joint are asked about: nulls where something is missing, and what that is. */
export type JointSubject = { readonly [K in JointFigure]: Bounded | null } & ThreadPlace &
  BodyUnknown & {
    readonly lacks: Lack | null
    readonly lacksRing?: Lack | null
    /** Whether the strength of the casting is that of its alloy. */
    readonly typical: boolean
    /** Whether the strength of the part is its least, as a class or a sheet promises it. */
    readonly leastOfPart: boolean
    readonly castingMetal: { readonly metal: CastMetal; readonly tensileMpa: number; readonly yieldMpa: number | null } | null
  }

export type JointFigure = keyof Pick<
  ReturnType<typeof jointFit>,
  | 'torqueNm'
  | 'preloadN'
  | 'internalStripLoadN'
  | 'castingMarginN'
  | 'partMarginN'
  | 'bodyMarginMpa'
  | 'breakMarginMpa'
  | 'engagementSpareMm'
  | 'engagementRequiredMm'
  | 'bearingPressureMpa'
  | 'lowestTorqueNm'
  | 'highestTorqueNm'
  | 'proofTorqueNm'
>

type Circuit = BoundsOf<ReturnType<typeof circuitFit>>

/** What the rules of any load are asked about. */
export type LoadSubject = Pick<Circuit['loads'][number], 'dropV' | 'dropPercent' | 'atV'> & {
  readonly load: string
  readonly reversedBy: readonly string[]
  readonly limit: (Limit & { readonly unit: '%' | 'V' }) | null
  readonly unsure: Unsure | null
}

/** What the rules of a whole circuit are asked about. */
export interface CircuitSubject {
  readonly walk: readonly StatedFault[]
  readonly known: number
  readonly unknown: readonly UnknownWire[]
  readonly silent: readonly string[]
  readonly unsaid: readonly { readonly name: string; readonly at: Finding['at'] }[]
  readonly heaterHoles: readonly string[]
  readonly loadNames: readonly string[]
  readonly marks: readonly string[]
  readonly rated: readonly { readonly mark: string; readonly ratingA: Given }[]
  readonly labels: { readonly [mark: string]: string | null }
}
