import { NoAnswer } from '../../formula/no-answer.ts'

export function notWarming(): NoAnswer {
  return new NoAnswer(
    'the block does not get warmer in this heat test: nothing can be fitted to it',
    'see that the heater was on and that the times count from switch-on'
  )
}

export function noCurve(): NoAnswer {
  return new NoAnswer(
    'no curve of a block that warms fits the readings of this heat test',
    'see that each reading stands at its time from switch-on, and measure again'
  )
}

/** `doubt`: where its readings contradict each other as well. */
export function tooShort(doubt: string | undefined): NoAnswer {
  return new NoAnswer(
    `this heat test does not tell the loss from the heat stored: the temperature still rises too evenly for the accuracy of the readings${doubt === undefined ? '' : `; ${doubt}`}`,
    'run on until the rise has plainly slowed, or read finer'
  )
}
