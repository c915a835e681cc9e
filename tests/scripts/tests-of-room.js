import { readFileSync } from 'node:fs'
import { globSync } from 'tinyglobby'

/** Those of the room, and those that hold it against values from outside; a simulator that takes seconds to start is left to the suite. */
export function testsOf(room) {
  const outside = globSync('tests/outside/*.test.ts').filter(file => {
    const text = readFileSync(file, 'utf8')
    return text.includes(`src/trade/${room}/`) && !text.includes("from './simulator.ts'")
  })
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
