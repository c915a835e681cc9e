// Copied from published tables. Each row names its source; the label says how the source was seen.

import type { Cited } from './cited.ts'

const S1: Cited = {
  source: 'ASME B1.1 formulas (read-secondary), each term rounded as the standard rounds it; agrees with a published B1.1 table excerpt',
  label: 'read-secondary'
}
const S2: Cited = { source: 'ASME B1.1 class 2B limits from published tables', label: 'read-secondary' }
const S3: Cited = {
  source: 'ASME B1.1 formulas (read-secondary), each term rounded as the standard rounds it',
  label: 'read-secondary'
}
const S4: Cited = { source: 'ASME B1.1 class 2B computed from the B1.1 formulas', label: 'read-secondary' }

/** Limits of size, inches as printed: major diameter of an external thread, minor diameter of an internal one, and pitch diameter. */
export const UNIFIED_LIMIT_ROWS = [
  {
    thread: '#1-64 UNC',
    fit: '2A',
    allowance: '0.0006',
    crest: ['0.0686', '0.0724'],
    pitch: ['0.0603', '0.0623'],
    kind: 'published',
    ...S1
  },
  { thread: '#1-64 UNC', fit: '2B', allowance: null, crest: ['0.0561', '0.0623'], pitch: ['0.0629', '0.0655'], kind: 'published', ...S2 },
  {
    thread: '#2-56 UNC',
    fit: '2A',
    allowance: '0.0006',
    crest: ['0.0813', '0.0854'],
    pitch: ['0.0717', '0.0738'],
    kind: 'published',
    ...S1
  },
  { thread: '#2-56 UNC', fit: '2B', allowance: null, crest: ['0.0667', '0.0737'], pitch: ['0.0744', '0.0772'], kind: 'published', ...S2 },
  {
    thread: '#3-48 UNC',
    fit: '2A',
    allowance: '0.0007',
    crest: ['0.0938', '0.0983'],
    pitch: ['0.0825', '0.0848'],
    kind: 'published',
    ...S1
  },
  {
    thread: '#3-48 UNC',
    fit: '2B',
    allowance: null,
    crest: ['0.0764', '0.0845'],
    pitch: ['0.0855', '0.0885'],
    kind: 'published',
    note: 'one fastener-supplier sheet misprints the 2B maximum pitch diameter as 0.0855',
    ...S2
  },
  {
    thread: '#5-40 UNC',
    fit: '2A',
    allowance: '0.0008',
    crest: ['0.1191', '0.1242'],
    pitch: ['0.1054', '0.1080'],
    kind: 'computed stepwise',
    ...S3
  },
  { thread: '#5-40 UNC', fit: '2B', allowance: null, crest: ['0.0979', '0.1062'], pitch: ['0.1088', '0.1121'], kind: 'published', ...S2 },
  {
    thread: '#6-32 UNC',
    fit: '2A',
    allowance: '0.0008',
    crest: ['0.1312', '0.1372'],
    pitch: ['0.1141', '0.1169'],
    kind: 'computed stepwise',
    ...S3
  },
  { thread: '#6-32 UNC', fit: '2B', allowance: null, crest: ['0.1040', '0.1140'], pitch: ['0.1177', '0.1214'], kind: 'published', ...S2 },
  {
    thread: '#10-24 UNC',
    fit: '2A',
    allowance: '0.0010',
    crest: ['0.1818', '0.1890'],
    pitch: ['0.1586', '0.1619'],
    kind: 'computed stepwise',
    ...S3
  },
  { thread: '#10-24 UNC', fit: '2B', allowance: null, crest: ['0.1450', '0.1560'], pitch: ['0.1629', '0.1672'], kind: 'published', ...S2 },
  {
    thread: '#12-24 UNC',
    fit: '2A',
    allowance: '0.0010',
    crest: ['0.2078', '0.2150'],
    pitch: ['0.1845', '0.1879'],
    kind: 'computed stepwise',
    ...S3
  },
  { thread: '#12-24 UNC', fit: '2B', allowance: null, crest: ['0.1710', '0.1810'], pitch: ['0.1889', '0.1933'], kind: 'published', ...S2 },
  {
    thread: '1/4-20 UNC',
    fit: '2A',
    allowance: '0.0011',
    crest: ['0.2408', '0.2489'],
    pitch: ['0.2127', '0.2164'],
    kind: 'computed stepwise',
    ...S3
  },
  { thread: '1/4-20 UNC', fit: '2B', allowance: null, crest: ['0.1960', '0.2070'], pitch: ['0.2175', '0.2224'], kind: 'published', ...S2 },
  {
    thread: '5/16-18 UNC',
    fit: '2A',
    allowance: '0.0012',
    crest: ['0.3026', '0.3113'],
    pitch: ['0.2712', '0.2752'],
    kind: 'computed stepwise',
    ...S3
  },
  { thread: '5/16-18 UNC', fit: '2B', allowance: null, crest: ['0.2520', '0.2650'], pitch: ['0.2764', '0.2817'], kind: 'published', ...S2 },
  {
    thread: '7/16-14 UNC',
    fit: '2A',
    allowance: '0.0014',
    crest: ['0.4258', '0.4361'],
    pitch: ['0.3850', '0.3897'],
    kind: 'computed stepwise',
    ...S3
  },
  { thread: '7/16-14 UNC', fit: '2B', allowance: null, crest: ['0.3600', '0.3760'], pitch: ['0.3911', '0.3972'], kind: 'published', ...S2 },
  {
    thread: '1/2-13 UNC',
    fit: '2A',
    allowance: '0.0015',
    crest: ['0.4876', '0.4985'],
    pitch: ['0.4435', '0.4485'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '1/2-13 UNC',
    fit: '2B',
    allowance: null,
    crest: ['0.4170', '0.4340'],
    pitch: ['0.4500', '0.4565'],
    kind: 'published except the misprinted field (formula)',
    note: 'one fastener-supplier sheet misprints the 2B minimum minor diameter as 0.4700',
    ...S2
  },
  {
    thread: '9/16-12 UNC',
    fit: '2A',
    allowance: '0.0016',
    crest: ['0.5495', '0.5609'],
    pitch: ['0.5016', '0.5068'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '9/16-12 UNC',
    fit: '2B',
    allowance: null,
    crest: ['0.4720', '0.4900'],
    pitch: ['0.5084', '0.5152'],
    kind: 'published except the misprinted field (formula)',
    note: 'one fastener-supplier sheet misprints the 2B maximum pitch diameter as 0.5125',
    ...S2
  },
  {
    thread: '5/8-11 UNC',
    fit: '2A',
    allowance: '0.0016',
    crest: ['0.6113', '0.6234'],
    pitch: ['0.5589', '0.5644'],
    kind: 'published',
    note: 'formula with half-up rounding gives allowance 0.0017; published tables print 0.0016',
    ...S1
  },
  { thread: '5/8-11 UNC', fit: '2B', allowance: null, crest: ['0.5270', '0.5460'], pitch: ['0.5660', '0.5732'], kind: 'published', ...S2 },
  {
    thread: '3/4-10 UNC',
    fit: '2A',
    allowance: '0.0018',
    crest: ['0.7353', '0.7482'],
    pitch: ['0.6773', '0.6832'],
    kind: 'computed stepwise',
    ...S3
  },
  { thread: '3/4-10 UNC', fit: '2B', allowance: null, crest: ['0.6420', '0.6630'], pitch: ['0.6850', '0.6927'], kind: 'published', ...S2 },
  {
    thread: '1-8 UNC',
    fit: '2A',
    allowance: '0.0020',
    crest: ['0.9830', '0.9980'],
    pitch: ['0.9100', '0.9168'],
    kind: 'computed stepwise',
    ...S3
  },
  { thread: '1-8 UNC', fit: '2B', allowance: null, crest: ['0.8650', '0.8900'], pitch: ['0.9188', '0.9276'], kind: 'published', ...S2 },
  {
    thread: '1-1/8-7 UNC',
    fit: '2A',
    allowance: '0.0022',
    crest: ['1.1064', '1.1228'],
    pitch: ['1.0227', '1.0300'],
    kind: 'computed stepwise',
    ...S3
  },
  { thread: '1-1/8-7 UNC', fit: '2B', allowance: null, crest: ['0.9700', '0.9980'], pitch: ['1.0322', '1.0416'], kind: 'published', ...S2 },
  {
    thread: '1-3/8-6 UNC',
    fit: '2A',
    allowance: '0.0024',
    crest: ['1.3544', '1.3726'],
    pitch: ['1.2563', '1.2643'],
    kind: 'computed stepwise',
    ...S3
  },
  { thread: '1-3/8-6 UNC', fit: '2B', allowance: null, crest: ['1.1950', '1.2250'], pitch: ['1.2667', '1.2771'], kind: 'published', ...S2 },
  {
    thread: '1-1/2-6 UNC',
    fit: '2A',
    allowance: '0.0024',
    crest: ['1.4794', '1.4976'],
    pitch: ['1.3812', '1.3893'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '1-1/2-6 UNC',
    fit: '2B',
    allowance: null,
    crest: ['1.3200', '1.3500'],
    pitch: ['1.3917', '1.4022'],
    kind: 'published except the misprinted field (formula)',
    note: 'one fastener-supplier sheet prints the 2B maximum pitch diameter as 1.4075',
    ...S2
  },
  {
    thread: '#0-80 UNF',
    fit: '2A',
    allowance: '0.0005',
    crest: ['0.0563', '0.0595'],
    pitch: ['0.0496', '0.0514'],
    kind: 'published',
    ...S1
  },
  { thread: '#0-80 UNF', fit: '2B', allowance: null, crest: ['0.0465', '0.0514'], pitch: ['0.0519', '0.0542'], kind: 'published', ...S2 },
  {
    thread: '#2-64 UNF',
    fit: '2A',
    allowance: '0.0006',
    crest: ['0.0816', '0.0854'],
    pitch: ['0.0733', '0.0753'],
    kind: 'published',
    ...S1
  },
  { thread: '#2-64 UNF', fit: '2B', allowance: null, crest: ['0.0691', '0.0753'], pitch: ['0.0759', '0.0786'], kind: 'published', ...S2 },
  {
    thread: '#3-56 UNF',
    fit: '2A',
    allowance: '0.0007',
    crest: ['0.0942', '0.0983'],
    pitch: ['0.0845', '0.0867'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '#3-56 UNF',
    fit: '2B',
    allowance: null,
    crest: ['0.0797', '0.0865'],
    pitch: ['0.0874', '0.0902'],
    kind: 'computed stepwise',
    ...S4
  },
  {
    thread: '#5-44 UNF',
    fit: '2A',
    allowance: '0.0007',
    crest: ['0.1195', '0.1243'],
    pitch: ['0.1070', '0.1095'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '#5-44 UNF',
    fit: '2B',
    allowance: null,
    crest: ['0.1004', '0.1079'],
    pitch: ['0.1102', '0.1134'],
    kind: 'computed stepwise',
    ...S4
  },
  {
    thread: '#6-40 UNF',
    fit: '2A',
    allowance: '0.0008',
    crest: ['0.1321', '0.1372'],
    pitch: ['0.1184', '0.1210'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '#6-40 UNF',
    fit: '2B',
    allowance: null,
    crest: ['0.1110', '0.1190'],
    pitch: ['0.1218', '0.1252'],
    kind: 'computed stepwise',
    ...S4
  },
  {
    thread: '#10-32 UNF',
    fit: '2A',
    allowance: '0.0009',
    crest: ['0.1831', '0.1891'],
    pitch: ['0.1658', '0.1688'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '#10-32 UNF',
    fit: '2B',
    allowance: null,
    crest: ['0.1560', '0.1640'],
    pitch: ['0.1697', '0.1736'],
    kind: 'computed stepwise',
    ...S4
  },
  {
    thread: '#12-28 UNF',
    fit: '2A',
    allowance: '0.0010',
    crest: ['0.2085', '0.2150'],
    pitch: ['0.1886', '0.1918'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '#12-28 UNF',
    fit: '2B',
    allowance: null,
    crest: ['0.1770', '0.1860'],
    pitch: ['0.1928', '0.1970'],
    kind: 'computed stepwise',
    ...S4
  },
  {
    thread: '5/16-24 UNF',
    fit: '2A',
    allowance: '0.0011',
    crest: ['0.3042', '0.3114'],
    pitch: ['0.2806', '0.2843'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '5/16-24 UNF',
    fit: '2B',
    allowance: null,
    crest: ['0.2670', '0.2770'],
    pitch: ['0.2854', '0.2902'],
    kind: 'computed stepwise',
    ...S4
  },
  {
    thread: '3/8-24 UNF',
    fit: '2A',
    allowance: '0.0011',
    crest: ['0.3667', '0.3739'],
    pitch: ['0.3430', '0.3468'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '3/8-24 UNF',
    fit: '2B',
    allowance: null,
    crest: ['0.3300', '0.3400'],
    pitch: ['0.3479', '0.3528'],
    kind: 'computed stepwise',
    ...S4
  },
  {
    thread: '1/2-20 UNF',
    fit: '2A',
    allowance: '0.0013',
    crest: ['0.4906', '0.4987'],
    pitch: ['0.4619', '0.4662'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '1/2-20 UNF',
    fit: '2B',
    allowance: null,
    crest: ['0.4460', '0.4570'],
    pitch: ['0.4675', '0.4731'],
    kind: 'computed stepwise',
    ...S4
  },
  {
    thread: '9/16-18 UNF',
    fit: '2A',
    allowance: '0.0014',
    crest: ['0.5524', '0.5611'],
    pitch: ['0.5205', '0.5250'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '9/16-18 UNF',
    fit: '2B',
    allowance: null,
    crest: ['0.5020', '0.5150'],
    pitch: ['0.5264', '0.5323'],
    kind: 'computed stepwise',
    ...S4
  },
  {
    thread: '3/4-16 UNF',
    fit: '2A',
    allowance: '0.0015',
    crest: ['0.7391', '0.7485'],
    pitch: ['0.7029', '0.7079'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '3/4-16 UNF',
    fit: '2B',
    allowance: null,
    crest: ['0.6820', '0.6960'],
    pitch: ['0.7094', '0.7159'],
    kind: 'computed stepwise',
    ...S4
  },
  {
    thread: '7/8-14 UNF',
    fit: '2A',
    allowance: '0.0016',
    crest: ['0.8631', '0.8734'],
    pitch: ['0.8216', '0.8270'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '7/8-14 UNF',
    fit: '2B',
    allowance: null,
    crest: ['0.7980', '0.8140'],
    pitch: ['0.8286', '0.8356'],
    kind: 'computed stepwise',
    ...S4
  },
  {
    thread: '1-1/8-12 UNF',
    fit: '2A',
    allowance: '0.0018',
    crest: ['1.1118', '1.1232'],
    pitch: ['1.0631', '1.0691'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '1-1/8-12 UNF',
    fit: '2B',
    allowance: null,
    crest: ['1.0350', '1.0530'],
    pitch: ['1.0709', '1.0787'],
    kind: 'computed stepwise',
    ...S4
  },
  {
    thread: '1-1/4-12 UNF',
    fit: '2A',
    allowance: '0.0018',
    crest: ['1.2368', '1.2482'],
    pitch: ['1.1879', '1.1941'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '1-1/4-12 UNF',
    fit: '2B',
    allowance: null,
    crest: ['1.1600', '1.1780'],
    pitch: ['1.1959', '1.2039'],
    kind: 'computed stepwise',
    ...S4
  },
  {
    thread: '1-1/2-12 UNF',
    fit: '2A',
    allowance: '0.0019',
    crest: ['1.4867', '1.4981'],
    pitch: ['1.4376', '1.4440'],
    kind: 'computed stepwise',
    ...S3
  },
  {
    thread: '1-1/2-12 UNF',
    fit: '2B',
    allowance: null,
    crest: ['1.4100', '1.4280'],
    pitch: ['1.4459', '1.4542'],
    kind: 'computed stepwise',
    ...S4
  }
]
