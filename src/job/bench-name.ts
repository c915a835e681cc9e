import { bad, good, type Outcome } from '../quantity/fault.ts'
import { quoted } from '../quantity/quoted.ts'

/** Such a file is no job, and a folder of jobs is judged without it. */
export function isBenchName(name: string): boolean {
  return /\.bench\.ya?ml$/.test(name)
}

export function readBenchName(name: string): Outcome<string> {
  return isBenchName(name) ? good(name) : bad(quoted(name), 'a file named for what it is, as workshop.bench.yaml')
}

/** The bench that a text of a job names, before the text is read: whoever may open files needs to know. */
export function benchNamed(text: string): string | null {
  const [, , name] = /^bench:[ \t]*(["']?)([^"'#\r\n]+?)\1[ \t]*(?:#.*)?\r?$/m.exec(text) ?? []
  return name !== undefined && isBenchName(name) ? name : null
}
