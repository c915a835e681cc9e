import { askedBy, RULES } from '../../src/rules/list.ts'
import { PRACTICES } from '../../src/rules/practice/practice.ts'
import { cited } from './cited.ts'
import { code, generatedHead, pageText, tableText } from './markdown.ts'

const ABOUT = `A rule asks one question of a job or of a quick sum, and is named for the fault it finds. It judges the worst end of the bounds. \`fettle explain ID\` prints the same in the terminal.

The verdict is PASS, CAUTION, FAIL or NOT JUDGED. Nothing left of a margin is a CAUTION and no PASS; so is a good margin that hangs on a value nobody gave, or on a worst end that was searched for and not proved; the finding says which. What is missing makes a rule NOT JUDGED, and the finding names the field and how to measure it. A PASS holds against the limit named beside it and no more.

A question without any answer (no drill that keeps clear, no point where a load can run) fails under the id of its room, as \`hole/no-answer\`, with the reason and the nearest way out. Switches that short a source when all of them are on are a caution under \`circuit/no-answer\`.`

export function rulesPage(): string {
  const rooms = [...new Set(RULES.map(({ id }) => id.split('/')[0]!))].sort()
  return pageText([
    generatedHead('Rules', '`src/rules/`'),
    ABOUT,
    ...rooms.flatMap(room => [`## ${room}`, ...sectionsOf(room)]),
    practiceText()
  ])
}

function sectionsOf(room: string): readonly string[] {
  return RULES.filter(({ id }) => id.startsWith(`${room}/`))
    .sort((a, b) => a.id.localeCompare(b.id))
    .map(({ id, question, why, change, source }) =>
      [
        `### ${id}`,
        '',
        `- **Question:** ${question}`,
        `- **Why:** ${why}`,
        `- **What to change:** ${change}.`,
        `- **Source:** ${cited(source)}`,
        ...askers(id)
      ].join('\n')
    )
}

function askers(id: string): readonly string[] {
  const asker = askedBy(id)
  return asker === undefined ? [] : [`- **Asked by:** ${asker.replaceAll('"', '`')} alone, of no job that is checked.`]
}

/** The limits of each practice. */
function practiceText(): string {
  const rows = Object.values(PRACTICES).flatMap(({ name, says, drop }) =>
    drop.map(({ unit, value, fromV, toV, duty, source }) => [
      code(name),
      duty === 'any' ? says : `${says}, ${duty} loads`,
      `${value} ${unit}`,
      `${fromV} to ${toV} V`,
      cited(source)
    ])
  )
  return `## practices\n\nThe practice named in a job, or by \`--practice\`, sets the greatest drop. A job may give a limit of its own with its reason.\n\n${tableText(['practice', 'for', 'greatest drop', 'bus', 'source'], rows)}`
}
