// From memory of the tables of ASME B1.1: written down before they were worked out here.

import type { Cited } from './cited.ts'

const B11: Cited = { source: 'ASME B1.1 tables of limits of size', label: 'memory' }

/** Limits of the classes and the series that the reprinted rows leave out, inches as printed; null where not remembered. */
export const REMEMBERED_LIMITS = [
  { thread: '1/4-20 UNC', fit: '1A', crest: ['0.2367', '0.2489'], pitch: ['0.2108', '0.2164'], ...B11 },
  { thread: '1/4-20 UNC', fit: '1B', crest: ['0.1960', '0.2070'], pitch: ['0.2175', '0.2248'], ...B11 },
  { thread: '1/4-20 UNC', fit: '3A', crest: ['0.2419', '0.2500'], pitch: ['0.2147', '0.2175'], ...B11 },
  { thread: '1/4-20 UNC', fit: '3B', crest: ['0.1960', '0.2067'], pitch: ['0.2175', '0.2211'], ...B11 },
  { thread: '3/8-16 UNC', fit: '1A', crest: ['0.3595', '0.3737'], pitch: ['0.3266', '0.3331'], ...B11 },
  { thread: '3/8-16 UNC', fit: '1B', crest: null, pitch: ['0.3344', '0.3429'], ...B11 },
  { thread: '3/8-16 UNC', fit: '3A', crest: null, pitch: ['0.3311', '0.3344'], ...B11 },
  { thread: '3/8-16 UNC', fit: '3B', crest: null, pitch: ['0.3344', '0.3387'], ...B11 },
  { thread: '1/2-13 UNC', fit: '1A', crest: ['0.4822', '0.4985'], pitch: ['0.4411', '0.4485'], ...B11 },
  { thread: '1/2-13 UNC', fit: '1B', crest: null, pitch: ['0.4500', '0.4597'], ...B11 },
  { thread: '1/2-13 UNC', fit: '3A', crest: null, pitch: ['0.4463', '0.4500'], ...B11 },
  { thread: '1/2-13 UNC', fit: '3B', crest: ['0.4170', '0.4284'], pitch: ['0.4500', '0.4548'], ...B11 },
  { thread: '1/4-28 UNF', fit: '3A', crest: null, pitch: ['0.2243', '0.2268'], ...B11 },
  { thread: '1/4-28 UNF', fit: '3B', crest: ['0.2110', '0.2190'], pitch: null, ...B11 },
  { thread: '#4-40 UNC', fit: '3B', crest: ['0.0849', '0.0939'], pitch: null, ...B11 },
  { thread: '#6-32 UNC', fit: '3B', crest: ['0.1040', '0.1140'], pitch: null, ...B11 },
  { thread: '#8-32 UNC', fit: '3B', crest: ['0.1300', '0.1389'], pitch: null, ...B11 },
  { thread: '#10-32 UNF', fit: '3B', crest: ['0.1560', '0.1641'], pitch: null, ...B11 },
  { thread: '3/8-24 UNF', fit: '3B', crest: ['0.3300', '0.3372'], pitch: null, ...B11 },
  { thread: '5/8-11 UNC', fit: '3B', crest: ['0.5270', '0.5391'], pitch: null, ...B11 },
  { thread: '3/4-16 UNF', fit: '3B', crest: ['0.6820', '0.6908'], pitch: null, ...B11 },
  { thread: '1-8 UNC', fit: '3B', crest: ['0.8650', '0.8797'], pitch: null, ...B11 },
  { thread: '1/4-32 UNEF', fit: '2A', crest: ['0.2430', '0.2490'], pitch: ['0.2255', '0.2287'], ...B11 },
  { thread: '1/4-32 UNEF', fit: '2B', crest: ['0.2160', '0.2240'], pitch: ['0.2297', '0.2339'], ...B11 },
  { thread: '3/8-32 UNEF', fit: '2A', crest: ['0.3680', '0.3740'], pitch: ['0.3503', '0.3537'], ...B11 },
  { thread: '3/8-32 UNEF', fit: '2B', crest: ['0.3410', '0.3490'], pitch: ['0.3547', '0.3591'], ...B11 },
  { thread: '1/2-28 UNEF', fit: '2A', crest: ['0.4924', '0.4989'], pitch: ['0.4720', '0.4757'], ...B11 },
  { thread: '1/2-28 UNEF', fit: '2B', crest: ['0.4610', '0.4700'], pitch: ['0.4768', '0.4816'], ...B11 }
]
