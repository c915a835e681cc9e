// example: jobs as Markdown and as lines of JSON
import { describe, expect, it } from 'vitest'
import { printer as lines } from '../../src/report/jobs-lines.ts'
import { printer as markdown } from '../../src/report/jobs-markdown.ts'
import { JOBS, printed } from './jobs.ts'

describe('Markdown', () => {
  const text = printed(markdown)

  it('has a section a job and the sum last', () => {
    expect(text.match(/^## /gm)).toHaveLength(JOBS.length)
    expect(text.trimEnd().split('\n').at(-1)).toMatch(/^\*\*8 jobs: .*\*\*$/)
  })

  it('every row of a table has as many cells as its heading', () => {
    for (const table of text.split('\n\n').filter(part => part.startsWith('|'))) {
      const cells = table.split('\n').map(row => row.replaceAll('\\|', '').split('|').length)
      expect(new Set(cells).size).toBe(1)
    }
  })

  it('takes nothing in a job for mark-up', () => {
    expect(text).toContain('less \\<known\\> & "quoted" \\| \\*more\\*')
  })
})

describe('lines', () => {
  it('hold one document a job', () => {
    const documents = printed(lines)
      .trimEnd()
      .split('\n')
      .map(line => JSON.parse(line))
    expect(documents.map(({ jobs }) => jobs[0].file)).toEqual(JOBS.map(({ file }) => file))
    expect(documents.every(({ format, jobs }) => format === 'fettle/result@1' && jobs.length === 1)).toBe(true)
  })

  it('come one by one and keep nothing', () => {
    const { job, end } = lines({ columns: 80, colour: false, command: 'check', strict: false })
    expect(JOBS.map(job).every(line => line.endsWith('}\n'))).toBe(true)
    expect(end(0)).toBe('')
  })
})
