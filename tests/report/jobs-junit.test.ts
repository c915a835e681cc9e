// table: JUnit XML against the form that build servers read (tests/report/junit.xsd, from memory), checked by an XML Schema validator
import { readFileSync } from 'node:fs'
import { XmlDocument, XsdValidator } from 'libxml2-wasm'
import { describe, expect, it } from 'vitest'
import { printer } from '../../src/report/jobs-junit.ts'
import { JOBS, printed } from './jobs.ts'

const validator = XsdValidator.fromDoc(XmlDocument.fromString(readFileSync('tests/report/junit.xsd', 'utf8')))
const count = (text: string, path: string) => XmlDocument.fromString(text).find(path).length
const verdicts = JOBS.flatMap(({ findings }) => findings.map(({ verdict }) => verdict))
const number = (verdict: string) => verdicts.filter(one => one === verdict).length
const faults = JOBS.flatMap(({ errors }) => errors).length

describe('a report of every kind of finding and fault', () => {
  const text = printed(printer)

  it('has the form of its schema', () => {
    expect(() => validator.validate(XmlDocument.fromString(text))).not.toThrow()
  })

  it('and the schema would refuse another', () => {
    expect(() =>
      validator.validate(XmlDocument.fromString(text.replaceAll('<failure', '<broken').replaceAll('</failure', '</broken')))
    ).toThrow()
  })

  it('counts what is in it', () => {
    expect(count(text, '//testcase')).toBe(verdicts.length + faults)
    expect(count(text, '//failure')).toBe(number('fail'))
    expect(count(text, '//skipped')).toBe(number('not-judged'))
    expect(count(text, '//error')).toBe(faults)
    expect(text).toContain(`tests="${verdicts.length + faults}" failures="${number('fail')}" errors="${faults}"`)
  })

  it('judged strictly, whatever is no pass is a failure', () => {
    const strict = printed(printer, JOBS, { strict: true })
    expect(count(strict, '//failure')).toBe(verdicts.length - number('pass'))
    expect(count(strict, '//skipped')).toBe(0)
  })

  it('keeps words that look like mark-up, and drops what no XML may hold', () => {
    const [job] = JOBS
    const odd = printed(printer, [{ ...job!, title: '<b> & "x" \u0007 \uD800' }])
    expect(() => validator.validate(XmlDocument.fromString(odd))).not.toThrow()
    expect(odd).toContain('&lt;b&gt; &amp; &quot;x&quot; \u{FFFD} \u{FFFD}')
  })
})
