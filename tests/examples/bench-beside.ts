import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import type { BenchText } from '../../src/job/bench.ts'
import { benchNamed } from '../../src/job/bench-name.ts'

/** The bench that an example names, from beside it. */
export function benchBeside(file: string, text: string): BenchText | null {
  const name = benchNamed(text)
  if (name === null) return null
  const bench = join(dirname(file), name)
  return { file: bench, text: readFileSync(bench, 'utf8') }
}
