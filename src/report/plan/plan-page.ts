import { Chalk, type ChalkInstance } from 'chalk'
import { wrapAnsi } from 'fast-wrap-ansi'
import { visible } from '../../quantity/quoted.ts'
import { verdictLines } from '../findings-text.ts'
import type { Page } from '../page.ts'
import { HOLE_PARTS, type Plan, type Scrap, type Step } from './plan.ts'
import { sourceNote } from './source-note.ts'
import { thingName } from './thing-name.ts'

interface Paper {
  readonly width: number
  readonly ink: ChalkInstance
}

/** The order of work for the eye: what fails, then the number that is tightest, then every step under its part. */
export function planPage(plan: Plan, { columns, colour }: Page): string {
  const ink = new Chalk({ level: colour ? 1 : 0 })
  const paper = { width: Math.max(24, columns), ink }
  const wrong = plan.findings.filter(({ verdict }) => verdict === 'fail')
  const parts = [
    wrapped(`${ink.bold(visible(plan.file))}  ${plan.title}`, paper.width),
    verdictLines(
      wrong.map(finding => ({ ...finding, rule: `${finding.rule}  ${thingName(finding.thing)}` })),
      paper.width,
      ink
    ),
    firstText(plan.scraps[0], paper),
    plan.cautions.map(caution => hanging('!', caution, { ...paper, indent: 2 })).join('\n'),
    stepsText(plan.steps, paper)
  ]
  return `${parts.filter(part => part !== '').join('\n\n')}\n`
}

/** The one number that scraps the casting first. */
function firstText(scrap: Scrap | undefined, { width, ink }: Paper): string {
  if (scrap === undefined) return ''
  const { figure, thing, says } = scrap
  return wrapped(
    `${ink.bold(`${figure.text}  ${figure.name}, ${thingName(thing)}`)}: the number that scraps the part first\n${says}`,
    width
  )
}

function stepsText(steps: readonly Step[], paper: Paper): string {
  const lines = steps.map((step, i) => stepText(step, i + 1, { ...paper, across: acrossOf(steps, paper.width) }))
  const headed = steps.map((step, i) => {
    const before = steps[i - 1]
    return before !== undefined && headingOf(before) === headingOf(step)
      ? [lines[i]!]
      : [`${i === 0 ? '' : '\n'}${paper.ink.bold(headingOf(step))}`, lines[i]!]
  })
  return headed.flat().join('\n')
}

function headingOf({ part, thing }: Step): string {
  return HOLE_PARTS.includes(part) ? `${part.toUpperCase()}  ${thingName(thing)}` : part.toUpperCase()
}

/** Below this there is no room for two columns. */
const NARROW = 50

/** How wide the numbers stand: on a narrow page a long one goes on a line of its own. */
function acrossOf(steps: readonly Step[], width: number): number {
  const widest = Math.max(0, ...steps.map(({ figure }) => figure?.text.length ?? 0))
  return width < NARROW ? 0 : Math.min(widest, Math.floor(width / 3))
}

function stepText({ figure, says, caution, blank, source }: Step, no: number, paper: Paper & { readonly across: number }): string {
  const { across, ink } = paper
  const number = figure?.text ?? ''
  const from = sourceNote(source)
  const indent = 5 + across + (across > 0 ? 2 : 0)
  const long = number.length > across
  const head = `${String(no).padStart(3)}  ${long ? '' : `${ink.bold(number)}${' '.repeat(across - number.length)}`}`
  return [
    ...(long ? [hanging(head, ink.bold(number), { ...paper, indent: 5 })] : []),
    hanging(long ? '' : head, says, { ...paper, indent }),
    ...(caution === null ? [] : [hanging('', `! ${caution}`, { ...paper, indent })]),
    ...(from === '' ? [] : [hanging('', from, { ...paper, indent })]),
    ...(blank === null ? [] : [hanging('', `${blank}: ______`, { ...paper, indent })])
  ].join('\n')
}

/** Text beside what stands before it, its other lines under its first. */
function hanging(before: string, text: string, { width, indent }: { readonly width: number; readonly indent: number }): string {
  const margin = ' '.repeat(indent)
  const lines = wrapAnsi(text, Math.max(12, width - indent), { hard: true }).split('\n')
  const shown = before.replace(/\u001b\[\d+m/g, '').length
  return lines.map((line, i) => (i === 0 ? before + ' '.repeat(Math.max(0, indent - shown)) : margin) + line).join('\n')
}

function wrapped(text: string, width: number): string {
  return wrapAnsi(text, width, { hard: true })
}
