import { fact } from '../../formula/formula.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { SOURCES, type Source } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import type { PracticeName } from '../practice-names.ts'
import { alreadyIn, applied, type Derating, nothingOff } from './ampacity-derating.ts'
import type { PrintedCurrent } from './ampacity-table.ts'

interface BundleRow {
  readonly leastCount: number
  readonly factor: number
  readonly source: Source
}

/** Asked for from 50 V up; below that the rule sets no limit on bundles, and using them is a cautious choice. */
export const BOAT_BUNDLE: readonly BundleRow[] = [
  { leastCount: 25, factor: 0.4, source: SOURCES['boat-bundle'] },
  { leastCount: 7, factor: 0.5, source: SOURCES['boat-bundle'] },
  { leastCount: 4, factor: 0.6, source: SOURCES['boat-bundle'] },
  { leastCount: 3, factor: 0.7, source: SOURCES['boat-bundle'] }
]

/** Every wire loaded. Counts between the rows are read at the next larger one that is printed. */
export const ECSS_BUNDLE = [
  { wiresCount: 1, factor: 1 },
  { wiresCount: 2, factor: 0.9 },
  { wiresCount: 3, factor: 0.81 },
  { wiresCount: 5, factor: 0.71 },
  { wiresCount: 7, factor: 0.62 },
  { wiresCount: 9, factor: 0.59 }
] as const

/** Where no rule binds, the lowest published factor at each count. */
const GENERAL_BUNDLE: readonly BundleRow[] = [
  ...BOAT_BUNDLE,
  { leastCount: 2, factor: ECSS_BUNDLE[1].factor, source: SOURCES['ecss-bundle'] }
]

/** Null where the figure holds for a smaller bundle than this one and nothing published says what a larger one does. */
export function bundleDerating({ column, contains }: PrintedCurrent, practice: PracticeName, bundleCount: number): Derating | null {
  if (!(bundleCount >= 1)) throw new OutsideRange('bundleFactor', 'bundleCount', bundleCount, 1, Number.MAX_SAFE_INTEGER)
  if (contains.bundleCount > 1)
    return bundleCount > contains.bundleCount ? null : alreadyIn(`the table holds for ${contains.says}`, column.source)
  const row = (practice === 'boat' ? BOAT_BUNDLE : GENERAL_BUNDLE).find(row => bundleCount >= row.leastCount)
  if (row === undefined) return nothingOff('no factor for so few wires', SOURCES['boat-bundle'])
  recordStep(
    fact('bundleFactor', { says: 'wires that heat each other', symbol: 'fB', source: row.source }),
    row.factor,
    () => `${bundleCount} wires`
  )
  return applied(row.factor, `${bundleCount} wires together; published for 50 V and more, under 50 V a cautious choice`, row.source)
}

/** ECSS factor of a bundle with every wire loaded. */
export function ecssBundleFactor(wiresCount: number): number {
  const row = ECSS_BUNDLE.find(row => row.wiresCount >= wiresCount)
  if (row === undefined || !(wiresCount >= 1)) throw new OutsideRange('bundleFactor', 'wiresCount', wiresCount, 1, 9)
  return row.factor
}

/** ECSS correction where only some wires of the bundle are loaded. */
export function ecssPartLoadFactor(loadedPercent: number): number {
  if (!(loadedPercent >= 0 && loadedPercent <= 100)) throw new OutsideRange('partLoadFactor', 'loadedPercent', loadedPercent, 0, 100)
  if (loadedPercent < 25) return 1.2
  return loadedPercent <= 50 ? 1.1 : 1
}
