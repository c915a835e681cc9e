import { readdirSync, readFileSync } from 'node:fs'
import type { Reporter, TestModule } from 'vitest/node'

const ROWS = 'tests/outside/rows'

/** A line for each kind of row left out, with its reason. */
export function leftOut(): readonly string[] {
  const files = readdirSync(ROWS).filter(name => name.endsWith('-left-out.md'))
  return files.flatMap(name =>
    readFileSync(`${ROWS}/${name}`, 'utf8')
      .split('\n')
      .filter(line => line.startsWith('- '))
  )
}

/** Says last how many outside checks could not run here, and counts all tests on a line of their own. */
export class OutsideReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const tests = modules.flatMap(module => [...module.children.allTests()])
    const by = (state: string) => tests.filter(test => test.result().state === state)
    const missed = by('skipped').filter(({ fullName }) => fullName.includes('outside program: '))
    const ran =
      tests.filter(({ fullName, module }) => module.moduleId.includes('/tests/outside/') && !fullName.includes('shipped data: ')).length -
      missed.length
    const shipped = tests.filter(({ fullName }) => fullName.includes('shipped data: ')).length
    const programs = [...new Set(missed.map(({ fullName }) => /outside program: ([\w.-]+)/.exec(fullName)?.[1] ?? 'another program'))]
    const why = missed.length === 0 ? '' : ` (missing here: ${programs.join(', ')})`
    process.stdout.write(
      `\n${ran} outside checks ran, ${missed.length} could not run here${why}; ${shipped} checks of shipped data by another route\n`
    )
    process.stdout.write(
      `${leftOut().length} kinds of published rows are answered by no check: the reasons stand in tests/outside/rows/*-left-out.md\n`
    )
    process.stdout.write(`${by('passed').length} passed, ${by('failed').length} failed, ${by('skipped').length} skipped\n`)
  }
}
