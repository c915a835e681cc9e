import type { UnitTable } from '../unit-row.ts'

export const TIMES = {
  s: { is: 's', words: ['sec', 'secs', 'second', 'seconds'] },
  min: { is: 'minute', words: ['min', 'mins', 'minute', 'minutes'] },
  h: { is: 'hour', words: ['hr', 'hrs', 'hour', 'hours'] },
  ms: { is: 'ms', words: ['millisecond', 'milliseconds'] },
  µs: { is: 'us', words: ['microsecond', 'microseconds'] },
  d: { is: 'day', words: ['day', 'days'] }
} as const satisfies UnitTable

export const SPEEDS = {
  'm/s': { is: 'm/s' },
  'km/h': { is: 'km/hour', words: ['km/h', 'kph', 'kmh', 'km/hr'] },
  mph: { is: 'mile/hour', words: ['mph', 'mi/h'] },
  // A nautical mile is 1852 m (memory).
  kn: { is: 'm/hour', times: '1852', words: ['kt', 'kts', 'knot', 'knots'] },
  'ft/s': { is: 'foot/s', words: ['ft/s', 'ft/sec', 'fps'] },
  'ft/min': { is: 'foot/minute', words: ['ft/min', 'fpm'] }
} as const satisfies UnitTable
