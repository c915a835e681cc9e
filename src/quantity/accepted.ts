import { type Kind, rowOf } from './kinds.ts'

const MOST_NAMED = 6

/** `a torque in N·m, lbf·in, lbf·ft, …, as "17.5 N·m"`. */
export function acceptedText(kind: Kind): string {
  const { says, example, units } = rowOf(kind)
  const labels = Object.keys(units)
  const named = [...labels.slice(0, MOST_NAMED), ...(labels.length > MOST_NAMED ? ['…'] : [])].join(', ')
  return `${withArticle(says)}${rowOf(kind).pure === true ? '' : ` in ${named}`}, as "${example}"`
}

/** The ways to write bounds, in the unit of the kind. */
export function acceptedBounds(kind: Kind): string {
  const { says, house } = rowOf(kind)
  const tail = house && ` ${house}`
  const tolerance = `1 ${rowOf(rowOf(kind).tolerance ?? kind).house}`.trim()
  const ways = [`10${tail}`, `10${tail} ± ${tolerance}`, `10${tail} +${tolerance} -${tolerance}`, `9..11${tail}`]
  return `${withArticle(says)}, with or without bounds: ${ways.map(way => `"${way}"`).join(', ')}`
}

export function acceptedSpan(kind: Kind): string {
  const { says, house } = rowOf(kind)
  return `two ends of ${withArticle(says)}, as "5..25${house && ` ${house}`}"`
}

export function withArticle(says: string): string {
  return `${/^[aeiou]/.test(says) ? 'an' : 'a'} ${says}`
}
