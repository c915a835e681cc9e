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
    step('wire', '', 'lay out the route before anything is cut: clear of what is hot, sharp or moves, and out of the way of a boot'),
    ...fuelLine(practice),
    support(practice),
    ...deflection(practice),
    step('wire', '', 'let the wire hang in a loop before every box and terminal: water runs along it and drips off below'),
    step('wire', '', 'bend no tighter than this, in outsides of the wire; three where it is supported at a terminal', {
      figure: written(ofNumber('bendFactor', 'least bend radius, in outside diameters', 10), '10 ×'),
      source: 'tm-1-1500-204-23-4'
    })
  ]
}

function support({ support: { lengthMm, leastMm, source } }: Wiring): Step {
  const figure = { ...ofNumber('supportMm', 'distance between supports', lengthMm), low: leastMm, high: leastMm === null ? null : lengthMm }
  const shown =
    leastMm === null ? `≤ ${showNumber(lengthMm, 'count')} mm` : `${showNumber(leastMm, 'count')} to ${showNumber(lengthMm, 'count')} mm`
  return step('wire', '', 'plan the clamps, this far from one to the next', {
    figure: written(figure, shown),
    caution: 'a tie holds wires together; it does not hold them up',
    source: source.id
  })
}

function deflection({ deflection }: Wiring): readonly Step[] {
  if (deflection === null) return [step('wire', '', 'leave slack between clamps, and travel where the part moves')]
  return [
    step('wire', '', 'leave slack between clamps: under a hand it gives this much, and touches nothing', {
      figure: ofNumber('deflectionMm', 'deflection between supports', deflection.lengthMm),
      source: deflection.source.id
    })
  ]
}

function fuelLine({ fuelLine }: Wiring): readonly Step[] {
  if (fuelLine === null) return []
  const { lengthMm, leastMm, source } = fuelLine
  return [
    step(
      'wire',
      '',
      `keep this far off any fuel or oxygen line; down to ${showNumber(leastMm, 'count')} mm only with rigid, close clamps`,
      {
        figure: ofNumber('clearMm', 'distance from fuel lines', lengthMm),
        source: source.id
      }
    )
  ]
}
