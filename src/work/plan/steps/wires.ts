import { cutsOf } from '../../wiring/cuts.ts'
import { showWire } from '../../wiring/show-wire.ts'
import { ofNumber } from '../figure.ts'
import { type StepsOf, step } from '../step.ts'

/** Each wire cut with its slack. */
export const wires: StepsOf = ({ job }) => {
  const cuts = cutsOf(job)
  if (cuts.length === 0) return undefined
  return [
    ...cuts.map(cut =>
      step('wire', '', `cut ${cut.size}, ${cut.from} to ${cut.to}: ${showWire(cut)}`, {
        figure: ofNumber('cutM', 'length to cut', cut.cutM, 'run'),
        source: 'practice'
      })
    ),
    step('wire', '', 'crimp with the tool that goes with the terminal'),
    step('wire', '', 'pull at every crimp: none gives')
  ]
}
