import { NoAnswer } from './no-answer.ts'
import { OutsideRange } from './outside-range.ts'

/** What a calculation gives; null where it has no answer, or leaves what a formula is good for. */
export function answered<T>(calculation: () => T): T | null {
  try {
    return calculation()
  } catch (error) {
    if (error instanceof NoAnswer || error instanceof OutsideRange) return null
    throw error
  }
}
