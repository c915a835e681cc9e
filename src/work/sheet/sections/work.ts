import { HOLE_PARTS, type Step } from '../../../report/plan/plan.ts'
import { thingName } from '../../../report/plan/thing-name.ts'
import type { StepGroup } from '../../../report/sheet/sheet.ts'
import { stepsOf } from '../../plan/steps.ts'
import type { SectionOf } from '../section.ts'

/** The order of work, to be ticked off. */
export const work: SectionOf = judged => {
  const steps = stepsOf(judged)
  return steps.length === 0 ? undefined : { id: 'work', heading: 'Order of work', blocks: [{ kind: 'steps', groups: groupsOf(steps) }] }
}

function groupsOf(steps: readonly Step[]): readonly StepGroup[] {
  const groups: { heading: string; start: number; steps: Step[] }[] = []
  for (const [i, step] of steps.entries()) {
    const heading = headingOf(step)
    const last = groups.at(-1)
    if (last?.heading === heading) last.steps.push(step)
    else groups.push({ heading, start: i + 1, steps: [step] })
  }
  return groups
}

function headingOf({ part, thing }: Step): string {
  const name = part.charAt(0).toUpperCase() + part.slice(1)
  return HOLE_PARTS.includes(part) ? `${name}: ${thingName(thing)}` : name
}
