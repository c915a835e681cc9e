import { CommanderError } from 'commander'
import type { Fault } from '../quantity/fault.ts'
import { quoted } from '../quantity/quoted.ts'

/** An option of one value that was given two: nobody knows which was meant. */
export function givenTwice(name: string, first: string, second: string): Fault {
  return { found: `--${name} twice: ${quoted(first)} and ${quoted(second)}`, accepted: `--${name} once` }
}

const CODE = 'fettle.givenTwice'

/** Told by its code: each piece of the built program that is loaded by itself may have this class of its own. */
export function isGivenTwice(error: CommanderError): error is GivenTwice {
  return error.code === CODE
}

/** The same, thrown where the option parser of the program finds it. */
export class GivenTwice extends CommanderError {
  readonly option: string
  readonly fault: Fault

  constructor(name: string, first: string, second: string) {
    const fault = givenTwice(name, first, second)
    super(2, CODE, fault.found)
    this.option = `--${name}`
    this.fault = fault
  }
}
