import type { Step } from '../../report/plan/plan.ts'
import type { JudgedJob } from '../job/judged-job.ts'
import type { HoleStepsOf, StepsOf } from './step.ts'
import { askFirst } from './steps/ask-first.ts'
import { chips } from './steps/chips.ts'
import { close } from './steps/close.ts'
import { devices } from './steps/devices.ts'
import { drilled } from './steps/drilled.ts'
import { drilling } from './steps/drilling.ts'
import { feelAgain } from './steps/feel-again.ts'
import { firstVolts } from './steps/first-volts.ts'
import { firstWarmth } from './steps/first-warmth.ts'
import { fitting } from './steps/fitting.ts'
import { grounds } from './steps/grounds.ts'
import { handTest } from './steps/hand-test.ts'
import { lookAgain } from './steps/leak-test.ts'
import { makeReady } from './steps/make-ready.ts'
import { mouth } from './steps/mouth.ts'
import { record } from './steps/record.ts'
import { stop } from './steps/stop.ts'
import { readTag, tags } from './steps/tags.ts'
import { tapping } from './steps/tapping.ts'
import { wires } from './steps/wires.ts'
import { wiring } from './steps/wiring.ts'

/** What is done to each hole, in order: a new step is one file and one word here. */
const HOLE_STEPS: readonly HoleStepsOf[] = [chips, feelAgain, stop, drilling, drilled, tapping, mouth, readTag('try by hand'), handTest]
/** What is done to each part, once every hole is cut. */
const PART_STEPS: readonly HoleStepsOf[] = [readTag('fit'), fitting]

/** The whole order of work. */
const STEPS: readonly StepsOf[] = [
  askFirst,
  makeReady,
  tags,
  eachHole(HOLE_STEPS),
  eachHole(PART_STEPS),
  wiring,
  wires,
  grounds,
  devices,
  close,
  lookAgain,
  firstVolts,
  firstWarmth,
  record
]

export function stepsOf(judged: JudgedJob): readonly Step[] {
  return STEPS.flatMap(of => of(judged) ?? [])
}

function eachHole(steps: readonly HoleStepsOf[]): StepsOf {
  return judged => judged.holes.flatMap(hole => steps.flatMap(of => of(hole, judged) ?? []))
}
