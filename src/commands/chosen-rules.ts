import { bad, good, type Outcome } from '../quantity/fault.ts'
import { nearest } from '../quantity/near.ts'
import { quoted } from '../quantity/quoted.ts'
import { askedBy, RULES } from '../rules/list.ts'
import { FORMULA_FILES } from './formulas.ts'

const NO_ANSWER = '/no-answer'
const ASKED = RULES.map(({ id }) => id)
const ROOMS = [...new Set([...Object.keys(FORMULA_FILES), ...ASKED.map(id => id.split('/')[0]!)])]
/** Every id that a finding can have: the rules, and what each room says where there is no answer at all. */
const KNOWN = [...ASKED, ...ROOMS.map(room => room + NO_ANSWER)]

/** The rules to ask. What has no answer at all is told whatever was asked for, unless it is skipped by name. */
export function chosenRules(only: readonly string[], skip: readonly string[]): (id: string) => boolean {
  return id => !skip.includes(id) && (only.length === 0 || only.includes(id) || id.endsWith(NO_ANSWER))
}

/** One id of a rule, as it is typed. */
export function readRuleId(text: string): Outcome<string> {
  const id = text.trim()
  if (KNOWN.includes(id)) return good(id)
  return bad(`the unknown rule ${quoted(id)}`, 'ids of rules, after commas, as "seat/jams-in-run-out,drop/too-much"', near(id))
}

/** A rule to be asked and no other: one that a job is asked, else it would pass every job. */
export function readOnly(text: string): Outcome<string> {
  const read = readRuleId(text)
  const asker = read.ok ? askedBy(read.value) : undefined
  if (!read.ok || asker === undefined) return read
  const [room] = read.value.split('/')
  const others = ASKED.filter(id => id.startsWith(`${room}/`) && askedBy(id) === undefined)
  return bad(`${quoted(read.value)}, which ${asker} asks and no job is asked`, ['a rule that jobs are asked', ...others].join(', '))
}

/** The part after the stroke is enough to mean a rule, misspelt or not. */
function near(id: string): string | undefined {
  const last = nearest(
    id,
    ASKED.map(one => one.split('/')[1]!)
  )
  return nearest(id, KNOWN) ?? ASKED.find(one => one.split('/')[1] === last)
}
