import { showNumber } from '../../quantity/show.ts'
import type { Cut } from './cuts.ts'

/** `4.20 m of run, 0.10 m over at each end`. */
export function showWire({ runM, slackM }: Cut): string {
  return `${showNumber(runM, 'run')} m of run, ${showNumber(slackM / 2, 'run')} m over at each end`
}
