// table: SARIF 2.1.0 against its published JSON Schema (SARIF-2.1.0-rtm.5, read), and places in the file counted by hand
import { readFileSync } from 'node:fs'
import AjvDraft4 from 'ajv-draft-04'
import formats from 'ajv-formats'
import { describe, expect, it } from 'vitest'
import { printer } from '../../src/report/jobs-sarif.ts'
import { RULES } from '../../src/rules/list.ts'
import { judgeJob } from '../../src/work/job/judge-job.ts'
import { JOBS, printed } from './jobs.ts'

const SCHEMA = 'node_modules/@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json'
const ajv = new AjvDraft4.default({ strict: false, allErrors: true, unicodeRegExp: false })
formats.default(ajv)
const valid = ajv.compile(JSON.parse(readFileSync(SCHEMA, 'utf8')))

interface Result {
  readonly ruleId: string
  readonly ruleIndex: number
  readonly level: string
  readonly kind: string
  readonly message: { readonly text: string }
  readonly locations: readonly {
    readonly physicalLocation: {
      readonly artifactLocation: { readonly uri: string }
      readonly region?: { readonly startLine: number; readonly startColumn: number }
    }
  }[]
}

const runOf = (text: string) =>
  JSON.parse(text).runs[0] as {
    readonly results: readonly Result[]
    readonly tool: { readonly driver: { readonly rules: readonly { readonly id: string }[] } }
    readonly invocations: readonly { readonly exitCode: number; readonly executionSuccessful: boolean }[]
  }

describe('a log of every kind of finding and fault', () => {
  const text = printed(printer)
  const { results, tool, invocations } = runOf(text)

  it('is valid by the published schema', () => {
    valid(JSON.parse(text))
    expect(valid.errors).toBeNull()
  })

  it('and the schema would refuse a wrong one', () => {
    expect(valid(JSON.parse(text.replaceAll('"level": "error"', '"level": "bad"')))).toBe(false)
    expect(valid(JSON.parse(text.replaceAll('"startLine": ', '"startLine": -')))).toBe(false)
  })

  it('has a result for whatever is less than a pass, and for every fault', () => {
    const wanted = JOBS.flatMap(({ findings, errors }) => [
      ...errors.map(() => 'job/not-read'),
      ...findings.filter(({ verdict }) => verdict !== 'pass').map(({ rule }) => rule)
    ])
    expect(results.map(({ ruleId }) => ruleId)).toEqual(wanted)
    expect(new Set(results.map(({ level, kind }) => `${kind} ${level}`))).toEqual(new Set(['fail error', 'fail warning', 'open none']))
  })

  it('points every result at its rule', () => {
    for (const { ruleId, ruleIndex } of results) expect(tool.driver.rules[ruleIndex]?.id).toBe(ruleId)
    for (const { id } of RULES) expect(tool.driver.rules.map(rule => rule.id)).toContain(id)
  })

  it('says how it ended', () => {
    expect(invocations).toEqual([{ executionSuccessful: false, exitCode: 2 }])
  })

  it('writes names of files as references', () => {
    const uris = results.flatMap(({ locations }) => locations.map(({ physicalLocation }) => physicalLocation.artifactLocation.uri))
    expect(uris).toContain('a%20folder/%22short%22%20%26%20sweet.yaml')
    expect(uris).toContain('file:///gone.yaml')
  })
})

it('places stand at line and column', () => {
  const text = `fettle: 1
job: { title: x }
parts: { plug: { kind: plug, thread: M12x1.5 } }
holes:
  left:
    takes: plug
    found: { diametr: 9.8 mm, depth: 19.0 mm }
`
  const { results } = runOf(printed(printer, [judgeJob('x.yaml', text)]))
  const places = results.map(({ locations }) => locations[0]?.physicalLocation.region)
  // "diametr" begins at the 14th letter of line 7, the block that lacks "diameter" at the 12th.
  expect(places).toEqual([
    { startLine: 7, startColumn: 14 },
    { startLine: 7, startColumn: 12 }
  ])
})
