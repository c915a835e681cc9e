import { formula } from '../../formula/formula.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { SOURCES } from '../../formula/source.ts'
import type { Thread } from '../thread/thread.ts'
import type { CastMetal } from './casting-alloys.ts'

/** Specific cutting force of what is tapped, as the maker of taps prints it. */
export const TAPPED_MATERIALS = [
  { material: 'Ck15 steel 141 HB', cuttingMpa: 3600 },
  { material: 'Ck45 steel 188 HB', cuttingMpa: 3900 },
  { material: 'C105W2 175 HB', cuttingMpa: 5300 },
  { material: 'X6CrNi18-10 209 HB', cuttingMpa: 4200 },
  { material: 'CuZn40 brass', cuttingMpa: 2300 },
  { material: 'G-AlSi8Cu3 cast aluminium', cuttingMpa: 1300 },
  { material: 'GG-25 grey iron 193 HB', cuttingMpa: 2900 }
] as const satisfies readonly { material: string; cuttingMpa: number }[]

/** How the kind of tap and the pitch change the torque. The layout of the printed table was put together again from running text. */
export const TAP_FACTORS = [
  { tap: 'straight flute, plug (5 pitches): steel coarse', tapFactor: 1.35 },
  { tap: 'straight flute, plug: steel fine', tapFactor: 1.15 },
  { tap: 'straight flute, plug: cast iron and aluminium coarse', tapFactor: 1.25 },
  { tap: 'straight flute, plug: cast iron and aluminium fine', tapFactor: 1.08 },
  { tap: 'straight flute, bottoming (1.5 pitches): steel coarse', tapFactor: 1.43 },
  { tap: 'straight flute, bottoming: steel fine', tapFactor: 1.5 },
  { tap: 'straight flute, bottoming: cast iron and aluminium coarse', tapFactor: 1.3 },
  { tap: 'straight flute, bottoming: cast iron and aluminium fine', tapFactor: 1.25 },
  { tap: 'spiral flute: cast iron and aluminium coarse', tapFactor: 1.05 },
  { tap: 'spiral flute: cast iron and aluminium fine', tapFactor: 1.1 },
  { tap: 'spiral point: cast iron and aluminium coarse', tapFactor: 0.8 },
  { tap: 'spiral point: cast iron and aluminium fine', tapFactor: 1 }
] as const satisfies readonly { tap: string; tapFactor: number }[]

export const tappingTorqueNm = formula('tappingTorqueNm', {
  says: 'torque of cutting the thread, a sharp tap and no chips jammed',
  symbol: 'Tc',
  equation: 'tan(θ)·kc·K·(D - Do)^2·(D + 2·Do)/24000',
  inputs: {
    flankDeg: ['θ', 25, 30],
    cuttingMpa: ['kc', 500, 8000],
    tapFactor: ['K', 0.5, 2],
    majorMm: ['D', 0.8, 100],
    holeMm: ['Do', 0.5, 100]
  },
  source: SOURCES['tap-maker-torque'],
  of: ({ flankDeg, cuttingMpa, tapFactor, majorMm, holeMm }) =>
    (Math.tan((flankDeg * Math.PI) / 180) * cuttingMpa * tapFactor * (majorMm - holeMm) ** 2 * (majorMm + 2 * holeMm)) / 24000
})

/** Half the angle of a 60° thread. */
const FLANK_DEG = 30

interface Tapping {
  readonly majorMm: number
  readonly holeMm: number
  readonly cuttingMpa: number
  readonly tapFactor: number
}

/** Torque to expect on the tap wrench. What breaks a hand tap is not published: no limit goes with it. */
export function tapping({ majorMm, holeMm, cuttingMpa, tapFactor }: Tapping) {
  if (holeMm < majorMm) return { tappingTorqueNm: tappingTorqueNm({ flankDeg: FLANK_DEG, cuttingMpa, tapFactor, majorMm, holeMm }) }
  throw new NoAnswer('the hole is as large as the thread: a tap cuts nothing', 'take a larger thread or an insert')
}

/** What of the maker's table a casting is: none is printed for zinc and magnesium. */
const OF_METAL: { readonly [M in CastMetal]: (typeof TAPPED_MATERIALS)[number]['material'] | null } = {
  aluminium: 'G-AlSi8Cu3 cast aluminium',
  iron: 'GG-25 grey iron 193 HB',
  zinc: null,
  magnesium: null
}

interface HandTap {
  readonly thread: Thread
  readonly metal: CastMetal
  readonly holeMm: number
}

/** Torque of a bottoming hand tap in a casting; null where the maker prints no cutting force for its metal. */
export function handTapTorqueNm({ thread, metal, holeMm }: HandTap): number | null {
  const material = TAPPED_MATERIALS.find(row => row.material === OF_METAL[metal])
  if (material === undefined) return null
  const pitch = thread.series === 'coarse' || thread.series === 'UNC' ? 'coarse' : 'fine'
  const tap = TAP_FACTORS.find(row => row.tap === `straight flute, bottoming: cast iron and aluminium ${pitch}`)!
  return tapping({ majorMm: thread.majorMm, holeMm, cuttingMpa: material.cuttingMpa, tapFactor: tap.tapFactor }).tappingTorqueNm
}
