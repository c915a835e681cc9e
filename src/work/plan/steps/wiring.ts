import { showNumber } from '../../../quantity/show.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { WIRING, type Wiring } from '../../../rules/practice/wiring.ts'
import { ofNumber, written } from '../figure.ts'
import { type StepsOf, step } from '../step.ts'

/** How the harness is carried, with what the practice of the job asks for. */
export const wiring: StepsOf = ({ job }) => {
  if (job.circuit === null) return undefined
  const practice = WIRING[job.job.practice]
  return [
    step('wire', '', 'lay the route without cutting: clear of what is hot, sharp or moves, and out of the way of a boot'),
    ...fuelLine(practice),
    support(practice),
    ...deflection(practice),
    step('wire', '', 'a loop that drips before every box and terminal: water runs along a wire'),
    step('wire', '', "bend no tighter than ten times the wire's outside, three times where it is supported at a terminal", {
      figure: written(ofNumber('bendFactor', 'least bend radius, in outside diameters', 10), '10 ×'),
      source: 'tm-1-1500-204-23-4'
    }),
    step('wire', '', 'crimp with the tool that goes with the terminal, and pull each one')
  ]
}

function support({ support: { lengthMm, leastMm, source } }: Wiring): Step {
  const figure = { ...ofNumber('supportMm', 'distance between supports', lengthMm), low: leastMm, high: leastMm === null ? null : lengthMm }
  const shown =
    leastMm === null ? `≤ ${showNumber(lengthMm, 'count')} mm` : `${showNumber(leastMm, 'count')} to ${showNumber(lengthMm, 'count')} mm`
  return step('wire', '', 'from one clamp to the next; a tie holds wires together, it does not hold them up', {
    figure: written(figure, shown),
    source: source.id
  })
}

function deflection({ deflection }: Wiring): readonly Step[] {
  if (deflection === null) return [step('wire', '', 'leave slack between clamps, and travel where the part moves')]
  return [
    step('wire', '', 'slack between clamps: it gives this much under a hand, and touches nothing', {
      figure: ofNumber('deflectionMm', 'deflection between supports', deflection.lengthMm),
      source: deflection.source.id
    })
  ]
}

function fuelLine({ fuelLine }: Wiring): readonly Step[] {
  if (fuelLine === null) return []
  const { lengthMm, leastMm, source } = fuelLine
  return [
    step('wire', '', `off any fuel or oxygen line; down to ${showNumber(leastMm, 'count')} mm only with rigid, close clamps`, {
      figure: ofNumber('clearMm', 'distance from fuel lines', lengthMm),
      source: source.id
    })
  ]
}
