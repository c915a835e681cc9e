import { SOURCES } from '../../formula/source.ts'
import type { AmpacityTable, Contained } from './ampacity-table.ts'

const ALTITUDE_M = 18_288 // 60 000 ft

const THIN: Contained = {
  ambientC: 70,
  altitudeM: ALTITUDE_M,
  bundleCount: Number.POSITIVE_INFINITY,
  says: 'a bundle of 33 wires or more with at most 20 % of its capacity in use, 70 °C, 60 000 ft'
}

const THICK: Contained = {
  ambientC: 70,
  altitudeM: ALTITUDE_M,
  bundleCount: 9,
  says: 'a bundle of 9 wires with at most 20 % of its capacity in use, 70 °C, 60 000 ft'
}

/** Far below what one wire carries in free air: the conditions are part of the figure. */
export const AIRCRAFT_TABLE: AmpacityTable = {
  name: 'FAA AC 43.13-1B table 11-9',
  columns: [
    { insulationC: 105, source: SOURCES['ac-11-9-currents'] },
    { insulationC: 150, source: SOURCES['ac-11-9-unseen'] },
    { insulationC: 200, source: SOURCES['ac-11-9-currents'] }
  ],
  coolerInsulation: 'by rise',
  rows: [
    { awg: 24, currentsA: [2.5, 4, 5], contains: THIN },
    { awg: 22, currentsA: [3, 5, 6], contains: THIN },
    { awg: 20, currentsA: [4, 7, 9], contains: THIN },
    { awg: 18, currentsA: [6, 9, 12], contains: THIN },
    { awg: 16, currentsA: [7, 11, 14], contains: THIN },
    { awg: 14, currentsA: [10, 14, 18], contains: THIN },
    { awg: 12, currentsA: [13, 19, 25], contains: THIN },
    { awg: 10, currentsA: [17, 26, 32], contains: THIN },
    { awg: 8, currentsA: [38, 57, 71], contains: THICK },
    { awg: 6, currentsA: [50, 76, 97], contains: THICK },
    { awg: 4, currentsA: [68, 103, 133], contains: THICK },
    { awg: 2, currentsA: [95, 141, 179], contains: THICK },
    { awg: 1, currentsA: [113, 166, 210], contains: THICK },
    { awg: 0, currentsA: [128, 192, 243], contains: THICK },
    { awg: -1, currentsA: [147, 222, 285], contains: THICK },
    { awg: -2, currentsA: [172, 262, 335], contains: THICK },
    { awg: -3, currentsA: [204, 310, 395], contains: THICK }
  ]
}
