// Reads nudge-explained.md: constants that may move without a test that notices, and why.
import { readFileSync } from 'node:fs'

const HEADING = /^## (\S+)$/
const REMARK = /^- `([^`]+)`: \S/

/** The pieces of code, each with its file. */
function remarks() {
  let file
  return readFileSync(new URL('nudge-explained.md', import.meta.url), 'utf8')
    .split('\n')
    .flatMap(line => {
      file = HEADING.exec(line)?.[1] ?? file
      const code = REMARK.exec(line)?.[1]
      return code === undefined ? [] : [{ file, code }]
    })
}

/** What is remarked on the constants of a room, each at its place. */
export function remarksOf(room) {
  return remarks()
    .filter(({ file }) => file.startsWith(`src/trade/${room}/`))
    .map(remark => ({ ...remark, ...placeOf(remark) }))
}

/** Whether a constant stands in the piece of code that is remarked on. */
export function stands(constant, { file, from, to }) {
  return constant.file === file && constant.start >= from && constant.start < to
}

function placeOf({ file, code }) {
  const pieces = readFileSync(file, 'utf8').split(code)
  if (pieces.length !== 2) throw new Error(`nudge-explained.md: \`${code}\` stands ${pieces.length - 1} times in ${file}, not once`)
  return { from: pieces[0].length, to: pieces[0].length + code.length }
}
