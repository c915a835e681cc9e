import type { ResultMap } from '../../report/result-map.ts'
import { capacityJPerK, lossWPerK } from '../../trade/heat/heat-test.ts'

/** What the readings of a heat test were fitted with. */
export const HEAT_TEST_RESULTS: ResultMap<{ readonly capacityJPerK: number; readonly lossWPerK: number }> = {
  'heat-test.capacity': [capacityJPerK, r => r.capacityJPerK],
  'heat-test.loss': [lossWPerK, r => r.lossWPerK]
}
