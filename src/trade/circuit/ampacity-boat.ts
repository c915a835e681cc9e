import { SOURCES } from '../../formula/source.ts'
import type { AmpacityTable, Contained } from './ampacity-table.ts'

const OPEN: Contained = { ambientC: 30, altitudeM: 0, bundleCount: 1, says: 'stranded copper, 30 °C' }

const SEEN = SOURCES['33-cfr-183.425']
const UNSEEN = SOURCES['33-cfr-183.425-unseen']
const ENGINE_UNSEEN = SOURCES['33-cfr-engine-space-unseen']

export const BOAT_TABLE: AmpacityTable = {
  name: '33 CFR 183.425 table 5',
  columns: [
    { insulationC: 60, source: SEEN, engineSpace: { factor: 0.58, source: ENGINE_UNSEEN } },
    { insulationC: 75, source: SEEN, engineSpace: { factor: 0.75, source: ENGINE_UNSEEN } },
    { insulationC: 80, source: UNSEEN, engineSpace: { factor: 0.78, source: ENGINE_UNSEEN } },
    { insulationC: 90, source: UNSEEN, engineSpace: { factor: 0.82, source: ENGINE_UNSEEN } },
    { insulationC: 105, source: SEEN, engineSpace: { factor: 0.85, source: SOURCES['33-cfr-engine-space'] } },
    { insulationC: 125, source: UNSEEN, engineSpace: { factor: 0.89, source: ENGINE_UNSEEN } },
    // The note is remembered to give 1.00 here, which the heat cannot bear out; √(150/170) is taken instead.
    { insulationC: 200, source: SEEN, engineSpace: { factor: 0.94, source: SOURCES.practice } }
  ],
  coolerInsulation: 'refuse',
  rows: [
    { awg: 18, currentsA: [10, 10, 15, 20, 20, 25, 25], contains: OPEN },
    { awg: 16, currentsA: [15, 15, 20, 25, 25, 30, 35], contains: OPEN },
    { awg: 14, currentsA: [20, 20, 25, 30, 35, 40, 45], contains: OPEN },
    { awg: 12, currentsA: [25, 25, 35, 40, 45, 50, 55], contains: OPEN },
    { awg: 10, currentsA: [40, 40, 50, 55, 60, 70, 70], contains: OPEN },
    { awg: 8, currentsA: [55, 65, 70, 70, 80, 90, 100], contains: OPEN },
    { awg: 6, currentsA: [80, 95, 100, 100, 120, 125, 135], contains: OPEN },
    { awg: 4, currentsA: [105, 125, 130, 135, 160, 170, 180], contains: OPEN },
    { awg: 3, currentsA: [120, 145, 150, 155, 180, 195, 210], contains: OPEN },
    { awg: 2, currentsA: [140, 170, 175, 180, 210, 225, 240], contains: OPEN },
    { awg: 1, currentsA: [165, 195, 210, 210, 245, 265, 280], contains: OPEN },
    { awg: 0, currentsA: [195, 230, 245, 245, 285, 305, 325], contains: OPEN },
    { awg: -1, currentsA: [225, 265, 285, 285, 330, 355, 370], contains: OPEN },
    { awg: -2, currentsA: [260, 310, 330, 330, 385, 410, 430], contains: OPEN },
    { awg: -3, currentsA: [300, 360, 385, 385, 445, 475, 510], contains: OPEN }
  ]
}
