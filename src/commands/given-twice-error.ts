import { CommanderError } from 'commander'
import type { Fault } from '../quantity/fault.ts'
import { givenTwice } from './given-twice.ts'

const CODE = 'fettle.givenTwice'

/** Told by its code: each piece of the built program that is loaded by itself may have this class of its own. */
export function isGivenTwice(error: CommanderError): error is GivenTwice {
  return error.code === CODE
}

/** What `givenTwice` tells, thrown where the option parser of the program finds it. */
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
