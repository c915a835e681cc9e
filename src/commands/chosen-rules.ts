import { bad, good, type Outcome } from '../quantity/fault.ts'
import { nearest } from '../quantity/near.ts'
import { quoted } from '../quantity/quoted.ts'
import { RULES } from '../rules/list.ts'
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

/** The part after the stroke is enough to mean a rule, misspelt or not. */
function near(id: string): string | undefined {
  const last = nearest(
    id,
    ASKED.map(one => one.split('/')[1]!)
  )
  return nearest(id, KNOWN) ?? ASKED.find(one => one.split('/')[1] === last)
}
