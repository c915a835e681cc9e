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

const NOT_APART = 'this heat test does not tell the loss from the heat stored'

/** Its readings contradict each other: what they leave over hides everything else. */
export function spoiled({ found, change }: { readonly found: string; readonly change: string }): NoAnswer {
  return new NoAnswer(`${NOT_APART}: ${found}`, change)
}

/** The loss shows, the heat stored does not. */
export function tooLate(): NoAnswer {
  return new NoAnswer(
    `${NOT_APART}: its readings show too little of the rise, the metal has nearly settled`,
    'begin at switch-on and read often while it rises, or read finer'
  )
}

export function tooShort(): NoAnswer {
  return new NoAnswer(
    `${NOT_APART}: the temperature still rises too evenly for the accuracy of the readings`,
    'run on until the rise has plainly slowed, or read finer'
  )
}
