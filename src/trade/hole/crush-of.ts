import { Given } from '../../formula/given.ts'

/** What a stack loses at card torque. Where nothing lies under the shoulder nothing is lost, and no guess stands behind that. */
export function crushOf(crushMm: Given, stack: readonly Given[]): Given {
  const isNone = stack.every(({ high }) => high === 0)
  return isNone && crushMm.assumed !== undefined ? new Given(0, { at: crushMm.at }) : crushMm
}
