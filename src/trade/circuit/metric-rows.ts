import type { SourceId } from '../../formula/source.ts'

/** Nominal section in mm², greatest resistance at 20 °C in ohm/km as the table prints it, and where the row was seen. */
export type MetricRow = readonly [sectionMm2: number, ohmPerKm: number, from: SourceId]

/** Flexible conductors of plain copper, IEC 60228 table 3. */
export const CLASS_5 = [
  [0.5, 39, 'iec-60228'],
  [0.75, 26, 'iec-60228'],
  [1, 19.5, 'iec-60228'],
  [1.5, 13.3, 'iec-60228'],
  [2.5, 7.98, 'iec-60228'],
  [4, 4.95, 'iec-60228'],
  [6, 3.3, 'iec-60228'],
  [10, 1.91, 'iec-60228'],
  [16, 1.21, 'iec-60228'],
  [25, 0.78, 'iec-60228'],
  [35, 0.554, 'iec-60228'],
  [50, 0.386, 'iec-60228'],
  [70, 0.272, 'iec-60228'],
  [95, 0.206, 'iec-60228-unseen'],
  [120, 0.161, 'iec-60228-unseen']
] as const satisfies readonly MetricRow[]

/** Stranded conductors of plain copper, IEC 60228 table 2. */
export const CLASS_2 = [
  [0.5, 36, 'iec-60228'],
  [0.75, 24.5, 'iec-60228-unseen'],
  [1, 18.1, 'iec-60228'],
  [1.5, 12.1, 'iec-60228'],
  [2.5, 7.41, 'iec-60228-unseen'],
  [4, 4.61, 'iec-60228'],
  [6, 3.08, 'iec-60228'],
  [10, 1.83, 'iec-60228-unseen'],
  [16, 1.15, 'iec-60228'],
  [25, 0.727, 'iec-60228-unseen'],
  [35, 0.524, 'iec-60228'],
  [50, 0.387, 'iec-60228-unseen'],
  [70, 0.268, 'iec-60228-unseen'],
  [95, 0.193, 'iec-60228-unseen'],
  [120, 0.153, 'iec-60228-unseen']
] as const satisfies readonly MetricRow[]

/** Road vehicle cables of plain copper; of 0.35 mm² some editions print 52.0. */
export const ISO_6722 = [
  [0.22, 84.8, 'iso-6722-1'],
  [0.35, 54.4, 'iso-6722-1'],
  [0.5, 37.1, 'iso-6722-1'],
  [0.75, 24.7, 'iso-6722-1'],
  [1, 18.5, 'iso-6722-1'],
  [1.25, 14.9, 'iso-6722-1'],
  [1.5, 12.7, 'iso-6722-1'],
  [2, 9.42, 'iso-6722-1'],
  [2.5, 7.6, 'iso-6722-1'],
  [3, 6.15, 'iso-6722-1'],
  [4, 4.71, 'iso-6722-1'],
  [5, 3.94, 'iso-6722-1'],
  [6, 3.14, 'iso-6722-1'],
  [8, 2.38, 'iso-6722-1'],
  [10, 1.82, 'iso-6722-1'],
  [12, 1.52, 'iso-6722-1'],
  [16, 1.16, 'iso-6722-1'],
  [20, 0.955, 'iso-6722-1'],
  [25, 0.743, 'iso-6722-1'],
  [30, 0.647, 'iso-6722-1'],
  [35, 0.527, 'iso-6722-1'],
  [50, 0.368, 'iso-6722-1'],
  [70, 0.259, 'iso-6722-1'],
  [95, 0.196, 'iso-6722-1'],
  [120, 0.153, 'iso-6722-1']
] as const satisfies readonly MetricRow[]
