// Copied from published tables. Each row names its source; the label says how the source was seen.

import type { Cited } from './cited.ts'

const S1: Cited = {
  source: 'common ~75 % tap drill as tabulated in an open-source part library (soft-material column)',
  label: 'read-secondary'
}

/** Tap drills as printed; thread height in percent on both bases; whether the hole is inside the minor limits of class 2B. */
export const UNIFIED_TAP_DRILL_ROWS = [
  { thread: '#0-80 UNF', drillName: '3/64', inches: '0.0469', heightOn58: '97.0', heightOn34: '80.8', within: true, ...S1 },
  { thread: '#1-72 UNF', drillName: '#53', inches: '0.0595', heightOn58: '89.8', heightOn34: '74.8', within: true, ...S1 },
  { thread: '#2-56 UNC', drillName: '#50', inches: '0.0700', heightOn58: '82.8', heightOn34: '69.0', within: true, ...S1 },
  { thread: '#3-48 UNC', drillName: '#47', inches: '0.0785', heightOn58: '90.9', heightOn34: '75.7', within: true, ...S1 },
  { thread: '#3-56 UNF', drillName: '#45', inches: '0.0820', heightOn58: '87.9', heightOn34: '73.3', within: true, ...S1 },
  { thread: '#4-48 UNF', drillName: '#42', inches: '0.0935', heightOn58: '82.0', heightOn34: '68.4', within: true, ...S1 },
  { thread: '#5-40 UNC', drillName: '#38', inches: '0.1015', heightOn58: '86.8', heightOn34: '72.4', within: true, ...S1 },
  { thread: '#6-32 UNC', drillName: '#36', inches: '0.1065', heightOn58: '93.1', heightOn34: '77.6', within: true, ...S1 },
  { thread: '#6-40 UNF', drillName: '#33', inches: '0.1130', heightOn58: '92.4', heightOn34: '77.0', within: true, ...S1 },
  { thread: '#8-36 UNF', drillName: '#29', inches: '0.1360', heightOn58: '93.1', heightOn34: '77.6', within: true, ...S1 },
  { thread: '#10-24 UNC', drillName: '#25', inches: '0.1495', heightOn58: '89.8', heightOn34: '74.8', within: true, ...S1 },
  { thread: '#12-24 UNC', drillName: '#16', inches: '0.1770', heightOn58: '86.5', heightOn34: '72.1', within: true, ...S1 },
  { thread: '#12-28 UNF', drillName: '#14', inches: '0.1820', heightOn58: '87.9', heightOn34: '73.3', within: true, ...S1 },
  { thread: '1/4-20 UNC', drillName: '#7', inches: '0.2010', heightOn58: '90.5', heightOn34: '75.4', within: true, ...S1 },
  { thread: '5/16-18 UNC', drillName: 'F', inches: '0.2570', heightOn58: '92.3', heightOn34: '76.9', within: true, ...S1 },
  { thread: '5/16-24 UNF', drillName: 'I', inches: '0.2720', heightOn58: '89.8', heightOn34: '74.8', within: true, ...S1 },
  { thread: '3/8-24 UNF', drillName: 'Q', inches: '0.3320', heightOn58: '95.3', heightOn34: '79.4', within: true, ...S1 },
  { thread: '7/16-14 UNC', drillName: 'U', inches: '0.3680', heightOn58: '89.9', heightOn34: '74.9', within: true, ...S1 },
  { thread: '1/2-13 UNC', drillName: '27/64', inches: '0.4219', heightOn58: '93.8', heightOn34: '78.2', within: true, ...S1 },
  { thread: '1/2-20 UNF', drillName: '29/64', inches: '0.4531', heightOn58: '86.6', heightOn34: '72.2', within: true, ...S1 },
  { thread: '9/16-18 UNF', drillName: '33/64', inches: '0.5156', heightOn58: '77.9', heightOn34: '65.0', within: false, ...S1 },
  { thread: '5/8-11 UNC', drillName: '17/32', inches: '0.5312', heightOn58: '95.3', heightOn34: '79.4', within: true, ...S1 },
  { thread: '3/4-10 UNC', drillName: '21/32', inches: '0.6562', heightOn58: '86.6', heightOn34: '72.2', within: true, ...S1 },
  { thread: '3/4-16 UNF', drillName: '11/16', inches: '0.6875', heightOn58: '92.4', heightOn34: '77.0', within: true, ...S1 },
  { thread: '7/8-14 UNF', drillName: '13/16', inches: '0.8125', heightOn58: '80.8', heightOn34: '67.4', within: true, ...S1 },
  { thread: '1-8 UNC', drillName: '7/8', inches: '0.8750', heightOn58: '92.4', heightOn34: '77.0', within: true, ...S1 }
]
