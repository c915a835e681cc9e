import { showTime } from '../../../quantity/show-time.ts'
import { thingName } from '../../../report/plan/thing-name.ts'
import type { Block, Cell } from '../../../report/sheet/sheet.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { ofResult, withBand } from '../../plan/figure.ts'
import { type SectionOf, tableOrNone } from '../section.ts'

/** What the machine gives and what is left, by what it does; how long the battery carries all of it alone. */
export const supply: SectionOf = judged => {
  const { job, answer, result } = judged
  if (job.supply === null) return undefined
  const phases = [...new Set(answer.results.map(({ id }) => id.split(':')[0]!).filter(thing => thing.startsWith('supply.')))]
  const rows = phases.map((phase): readonly Cell[] => [
    thingName(phase).replace('supply, ', ''),
    ...['load', 'margin'].map(id => textOf(result(`${phase}:supply.${id}`)))
  ])
  const blocks: readonly Block[] = [
    ...tableOrNone('What the machine can feed', ['while', 'all loads', 'left over'], rows),
    ...alone(judged)
  ]
  return blocks.length === 0 ? undefined : { id: 'supply', heading: 'Supply', blocks }
}

function textOf(result: Parameters<typeof ofResult>[0]): string {
  const figure = ofResult(result)
  return figure === null ? '' : withBand(figure)
}

function alone({ result }: JudgedJob): readonly Block[] {
  const figure = ofResult(result('supply:supply.endurance'))
  if (figure === null) return []
  const least = figure.low === null ? '' : `, ${showTime(figure.low)} at the worst end`
  return [{ kind: 'text', text: `The battery alone carries all loads for ${showTime(figure.value)}${least}.` }]
}
