import { readFileSync } from 'node:fs'
import { globSync } from 'tinyglobby'

/** Those of the room, and those that hold it against values from outside. */
export function testsOf(room) {
  const outside = globSync('tests/outside/*.test.ts').filter(file => readFileSync(file, 'utf8').includes(`src/trade/${room}/`))
  return [...globSync(`tests/trade/${room}/**/*.test.ts`), ...outside].sort()
}

export async function failureOf(run) {
  try {
    await run()
    return undefined
  } catch (error) {
    return String(error?.message ?? error) || 'failed without a word'
  }
}
