// Copied from published tables. Each row names its source; the label says how the source was seen.

import type { Cited } from './cited.ts'

const S1: Cited = {
  source: 'ISO 2306 coarse core holes as tabulated in a general-purpose open-source CAD library',
  label: 'read-secondary'
}
const S2: Cited = { source: 'rule D - P to the nearest stocked drill (ISO 2306 practice)', label: 'memory' }
const S3: Cited = { source: 'metric fine tap drills in a vocational-training handbook (rule D-P, nearest drill)', label: 'read-secondary' }

/** Tap drills, mm; thread height in percent to one decimal on both bases; whether inside the 6H limits. */
export const METRIC_TAP_DRILLS = [
  { thread: 'M1.6x0.35', drillMm: 1.25, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  { thread: 'M1.8x0.35', drillMm: 1.45, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  { thread: 'M2.2x0.45', drillMm: 1.75, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  { thread: 'M2.5x0.45', drillMm: 2.05, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  { thread: 'M3.5x0.6', drillMm: 2.9, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  { thread: 'M4x0.7', drillMm: 3.3, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  {
    thread: 'M4.5x0.75',
    drillMm: 3.7,
    heightOn58Percent: 98.5,
    heightOn34Percent: 82.1,
    within: true,
    note: '3.7 / 3.75 / 3.8 in different lists',
    ...S1
  },
  { thread: 'M6x1', drillMm: 5, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  { thread: 'M7x1', drillMm: 6, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  {
    thread: 'M8x1.25',
    drillMm: 6.8,
    heightOn58Percent: 88.7,
    heightOn34Percent: 73.9,
    within: true,
    note: '6.75 in one training handbook',
    ...S1
  },
  { thread: 'M10x1.5', drillMm: 8.5, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  { thread: 'M11x1.5', drillMm: 9.5, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  {
    thread: 'M12x1.75',
    drillMm: 10.2,
    heightOn58Percent: 95,
    heightOn34Percent: 79.2,
    within: true,
    note: '10.2 (ISO 2306), 10.25 (a training handbook, a reference site), 10.3 (a part library)',
    ...S1
  },
  { thread: 'M14x2', drillMm: 12, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  { thread: 'M18x2.5', drillMm: 15.5, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  { thread: 'M20x2.5', drillMm: 17.5, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  { thread: 'M24x3', drillMm: 21, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  { thread: 'M27x3', drillMm: 24, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  { thread: 'M33x3.5', drillMm: 29.5, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  { thread: 'M36x4', drillMm: 32, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S1 },
  { thread: 'M3x0.35', drillMm: 2.65, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S2 },
  { thread: 'M3.5x0.35', drillMm: 3.15, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S2 },
  { thread: 'M4.5x0.5', drillMm: 4, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S2 },
  { thread: 'M5x0.5', drillMm: 4.5, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S2 },
  {
    thread: 'M6x0.75',
    drillMm: 5.2,
    heightOn58Percent: 98.5,
    heightOn34Percent: 82.1,
    within: true,
    note: '5.25 where D-P is used unrounded; other handbook and this value 5.2',
    ...S3
  },
  { thread: 'M7x0.75', drillMm: 6.2, heightOn58Percent: 98.5, heightOn34Percent: 82.1, within: true, ...S2 },
  { thread: 'M8x0.75', drillMm: 7.2, heightOn58Percent: 98.5, heightOn34Percent: 82.1, within: true, ...S3 },
  { thread: 'M9x0.75', drillMm: 8.2, heightOn58Percent: 98.5, heightOn34Percent: 82.1, within: true, ...S2 },
  {
    thread: 'M9x1',
    drillMm: 8,
    heightOn58Percent: 92.4,
    heightOn34Percent: 77,
    within: true,
    note: 'one training handbook misprints 9.0',
    ...S2
  },
  { thread: 'M10x0.75', drillMm: 9.2, heightOn58Percent: 98.5, heightOn34Percent: 82.1, within: true, ...S3 },
  {
    thread: 'M10x1.25',
    drillMm: 8.8,
    heightOn58Percent: 88.7,
    heightOn34Percent: 73.9,
    within: true,
    note: '8.75 where the rule D-P is used unrounded',
    ...S3
  },
  { thread: 'M11x0.75', drillMm: 10.2, heightOn58Percent: 98.5, heightOn34Percent: 82.1, within: true, ...S2 },
  { thread: 'M11x1', drillMm: 10, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S2 },
  { thread: 'M12x1.25', drillMm: 10.8, heightOn58Percent: 88.7, heightOn34Percent: 73.9, within: true, ...S3 },
  { thread: 'M12x1.5', drillMm: 10.5, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S3 },
  { thread: 'M14x1.25', drillMm: 12.8, heightOn58Percent: 88.7, heightOn34Percent: 73.9, within: true, ...S3 },
  { thread: 'M14x1.5', drillMm: 12.5, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S3 },
  { thread: 'M16x1.5', drillMm: 14.5, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S2 },
  { thread: 'M18x1.5', drillMm: 16.5, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S2 },
  { thread: 'M20x1.5', drillMm: 18.5, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S2 },
  { thread: 'M20x2', drillMm: 18, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S2 },
  { thread: 'M22x2', drillMm: 20, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S3 },
  { thread: 'M24x2', drillMm: 22, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S3 },
  { thread: 'M30x2', drillMm: 28, heightOn58Percent: 92.4, heightOn34Percent: 77, within: true, ...S3 }
] as const
