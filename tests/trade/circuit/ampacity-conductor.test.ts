// table: outside source. ASTM B258 (memory): d = 0.127·92^((36 − n)/39) mm.
import { expect, it } from 'vitest'
import { conductorName, gaugeFor } from '../../../src/trade/circuit/ampacity-conductor.ts'

const GAUGES = [24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3]
const areaMm2 = (awg: number) => (Math.PI / 4) * (0.127 * 92 ** ((36 - awg) / 39)) ** 2

it.each(GAUGES)('reads a metric wire at gauge %i from its section on, and not below', awg => {
  expect(gaugeFor({ standard: 'mm2', areaMm2: 1.001 * areaMm2(awg) }, GAUGES)).toBe(awg)
  expect(gaugeFor({ standard: 'mm2', areaMm2: 0.9999 * areaMm2(awg) }, GAUGES)).not.toBe(awg)
})

it('reads a gauge that is not printed at the next thinner one', () => {
  expect(gaugeFor({ standard: 'awg', awg: 13 }, GAUGES)).toBe(14)
  expect(gaugeFor({ standard: 'awg', awg: -4 }, GAUGES)).toBe(-3)
  expect(gaugeFor({ standard: 'awg', awg: 26 }, GAUGES)).toBeUndefined()
})

it('names a wire as the trade does', () => {
  expect([4, 0, -1, -3].map(awg => conductorName({ standard: 'awg', awg }))).toEqual(['AWG 4', 'AWG 0', 'AWG 00', 'AWG 0000'])
  expect(conductorName({ standard: 'mm2', areaMm2: 2.5 })).toBe('2.5 mm²')
})
