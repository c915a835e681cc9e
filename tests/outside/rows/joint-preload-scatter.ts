// Preload scatter by method; alpha is greatest preload over least.
export const SCATTER_ROWS = [
  {
    method: 'by feel',
    plusMinusPercent: 35,
    rangePercent: '',
    alpha: '2.08',
    source: "Machinery's Handbook table as quoted in course notes",
    label: 'read-secondary'
  },
  {
    method: 'torque wrench',
    plusMinusPercent: 25,
    rangePercent: '',
    alpha: '1.67',
    source: "Machinery's Handbook table as quoted in course notes",
    label: 'read-secondary'
  },
  {
    method: 'turn of nut',
    plusMinusPercent: 15,
    rangePercent: '',
    alpha: '1.35',
    source: "Machinery's Handbook table as quoted in course notes",
    label: 'read-secondary'
  },
  {
    method: 'preload-indicating washer',
    plusMinusPercent: 10,
    rangePercent: '',
    alpha: '1.22',
    source: "Machinery's Handbook table as quoted in course notes",
    label: 'read-secondary'
  },
  {
    method: 'bolt elongation',
    plusMinusPercent: 5,
    rangePercent: '3 to 5',
    alpha: '1.11',
    source: "Machinery's Handbook table as quoted in course notes",
    label: 'read-secondary'
  },
  {
    method: 'strain gauges',
    plusMinusPercent: 1,
    rangePercent: '',
    alpha: '1.02',
    source: "Machinery's Handbook table as quoted in course notes",
    label: 'read-secondary'
  },
  {
    method: 'torque, unlubricated',
    plusMinusPercent: 35,
    rangePercent: '',
    alpha: '2.08',
    source: 'NASA preloaded-bolt criteria (NSTS 08307 / TM-106943 family) as quoted in course notes',
    label: 'read-secondary'
  },
  {
    method: 'torque, cadmium plated',
    plusMinusPercent: 30,
    rangePercent: '',
    alpha: '1.86',
    source: 'NASA preloaded-bolt criteria (NSTS 08307 / TM-106943 family) as quoted in course notes',
    label: 'read-secondary'
  },
  {
    method: 'torque, lubricated',
    plusMinusPercent: 25,
    rangePercent: '',
    alpha: '1.67',
    source: 'NASA preloaded-bolt criteria (NSTS 08307 / TM-106943 family) as quoted in course notes',
    label: 'read-secondary'
  },
  {
    method: 'hydraulic tensioner',
    plusMinusPercent: 15,
    rangePercent: '',
    alpha: '1.35',
    source: 'NASA preloaded-bolt criteria (NSTS 08307 / TM-106943 family) as quoted in course notes',
    label: 'read-secondary'
  },
  {
    method: 'preload-indicating washer',
    plusMinusPercent: 10,
    rangePercent: '',
    alpha: '1.22',
    source: 'NASA preloaded-bolt criteria (NSTS 08307 / TM-106943 family) as quoted in course notes',
    label: 'read-secondary'
  },
  {
    method: 'ultrasonic',
    plusMinusPercent: 10,
    rangePercent: '',
    alpha: '1.22',
    source: 'NASA preloaded-bolt criteria (NSTS 08307 / TM-106943 family) as quoted in course notes',
    label: 'read-secondary'
  },
  {
    method: 'bolt elongation',
    plusMinusPercent: 5,
    rangePercent: '',
    alpha: '1.11',
    source: 'NASA preloaded-bolt criteria (NSTS 08307 / TM-106943 family) as quoted in course notes',
    label: 'read-secondary'
  },
  {
    method: 'instrumented bolt',
    plusMinusPercent: 5,
    rangePercent: '',
    alpha: '1.11',
    source: 'NASA preloaded-bolt criteria (NSTS 08307 / TM-106943 family) as quoted in course notes',
    label: 'read-secondary'
  },
  {
    method: 'yield- or angle-controlled',
    plusMinusPercent: 12,
    rangePercent: '5 to 12',
    alpha: '1.27',
    source: 'VDI 2230 (1986) as reproduced by a fastener supplier',
    label: 'read-secondary'
  },
  {
    method: 'hydraulic',
    plusMinusPercent: 23,
    rangePercent: '9 to 23',
    alpha: '1.60',
    source: 'VDI 2230 (1986) as reproduced by a fastener supplier',
    label: 'read-secondary'
  },
  {
    method: 'torque wrench, torque found by test',
    plusMinusPercent: 23,
    rangePercent: '17 to 23',
    alpha: '1.60',
    source: 'VDI 2230 (1986) as reproduced by a fastener supplier',
    label: 'read-secondary'
  },
  {
    method: 'torque wrench, friction estimated',
    plusMinusPercent: 28,
    rangePercent: '23 to 28',
    alpha: '1.78',
    source: 'VDI 2230 (1986) as reproduced by a fastener supplier',
    label: 'read-secondary'
  },
  {
    method: 'precision power screwdriver',
    plusMinusPercent: 43,
    rangePercent: '26 to 43',
    alpha: '2.51',
    source: 'VDI 2230 (1986) as reproduced by a fastener supplier',
    label: 'read-secondary'
  },
  {
    method: 'torque wrench, friction estimated (alpha_A 1.6 to 2.0)',
    plusMinusPercent: null,
    rangePercent: '',
    alpha: '1.6-2.0',
    source: 'VDI 2230 as quoted by a fastener supplier',
    label: 'read-secondary'
  }
] as const
