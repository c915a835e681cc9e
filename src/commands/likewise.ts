import { Given } from '../formula/given.ts'

/** The value of another option taken for one that was left out. With bounds it is the same quantity and moves as one with it. */
export function likewise(other: Given, option: string, why: string): Given {
  return other.low < other.high ? other : new Given(other.value, { assumed: `default: ${why}`, at: [option] })
}
