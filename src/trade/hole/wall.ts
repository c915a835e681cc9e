import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { insertFor } from '../thread/insert.ts'

export const threadHeightMm = formula('threadHeightMm', {
  says: 'how deep the thread of the hole is cut into the wall, on the radius',
  symbol: 'H1',
  equation: '5/8·√(3)/2·P',
  inputs: { pitchMm: ['P', 0.2, 8] },
  source: SOURCES['iso-68-1'],
  of: ({ pitchMm }) => (5 / 8) * (Math.sqrt(3) / 2) * pitchMm
})

/** The factor is worked out for a width of 1.4 diameters and more: thinner, nobody says what the thread still holds. */
export const threadWallLeastMm = formula('threadWallLeastMm', {
  says: 'least wall beside a thread for which its strength can be worked out',
  symbol: 'w3',
  equation: '(1.4 - 1)/2·D',
  inputs: { majorMm: ['D', 0.5, 110] },
  source: SOURCES.alexander,
  of: ({ majorMm }) => ((1.4 - 1) / 2) * majorMm
})

/** What a thread asks of the wall beside it, each more than the one before. */
export interface WallNeeds {
  /** As thick as the thread is deep. */
  readonly heightMm: number
  /** Its strength can be worked out. */
  readonly strengthMm: number
  /** So can that of the insert that would be the way back. */
  readonly insertMm: number
}

export function wallNeeds({ majorMm, pitchMm }: { readonly majorMm: number; readonly pitchMm: number }): WallNeeds {
  return {
    heightMm: threadHeightMm({ pitchMm }),
    strengthMm: threadWallLeastMm({ majorMm }),
    insertMm: insertFor({ majorMm, pitchMm }).wallLeastMm
  }
}
