// snapshot: the plan of both example jobs, at two widths; and laws of the page
import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import stringWidth from 'fast-string-width'
import { describe, expect, it } from 'vitest'
import { planDocument } from '../../../src/report/plan/plan-answer.ts'
import { planPage } from '../../../src/report/plan/plan-page.ts'
import { judgedJob } from '../../../src/work/job/judged-job.ts'
import { planOf } from '../../../src/work/plan/plan.ts'
import { jobText } from '../../work/invented-job.ts'

const planned = (file: string) => planOf(judgedJob(file, readFileSync(file, 'utf8')))

describe.each(['examples/gearbox-preheater.yaml', 'examples/hydraulic-tank-sensor.yaml'])('%s', file => {
  it.each([60, 160])('snapshot: the plan at %d columns', async columns => {
    const name = file.replace(/.*\/|\.yaml/g, '')
    await expect(planPage(planned(file), { columns, colour: false })).toMatchFileSnapshot(`snapshots/${name}-${columns}.txt`)
  })

  it.each([24, 40, 60, 80, 160])('no line is wider than a page of %d columns', columns => {
    const lines = planPage(planned(file), { columns, colour: false }).split('\n')
    expect(lines.filter(line => stringWidth(line) > columns)).toEqual([])
  })

  it('colour adds nothing but colour', () => {
    const plain = planPage(planned(file), { columns: 80, colour: false })
    expect(planPage(planned(file), { columns: 80, colour: true }).replace(/\u001b\[\d+m/g, '')).toBe(plain)
  })
})

it('what fails stands above every step', () => {
  const page = planPage(planned('examples/bad/floor-too-thin.yaml'), { columns: 80, colour: false })
  expect(page.indexOf('FAIL')).toBeLessThan(page.indexOf('ASK FIRST'))
  expect(page.indexOf('do not start')).toBeLessThan(page.indexOf('ASK FIRST'))
})

it('every step is in the document with its number and unit', () => {
  const plan = planned('examples/gearbox-preheater.yaml')
  const { tables } = planDocument(plan) as { readonly tables: { readonly steps: readonly { readonly [key: string]: unknown }[] } }
  expect(tables.steps).toHaveLength(plan.steps.length)
  expect(tables.steps.find(({ figure }) => figure === 'stop setting')).toMatchObject({ part: 'drill', thing: 'holes.sump', unit: 'mm' })
  expect(tables.steps.map(({ step }) => step)).toEqual(plan.steps.map((_, i) => i + 1))
})

it('whatever the words of the job, the page keeps its width and loses no step', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'grapheme', maxLength: 200 }).filter(text => !/[\p{Cc}\p{Cf}\p{Cs}]/u.test(text)),
      title => {
        const plan = planOf(judgedJob('x.yaml', jobText({ title, behind: title })))
        fc.pre(plan.errors.length === 0)
        const page = planPage(plan, { columns: 60, colour: false })
        expect(page.split('\n').filter(line => stringWidth(line) > 61)).toEqual([])
        expect(page).toContain(`${String(plan.steps.length).padStart(3)}  `)
      }
    ),
    { numRuns: 40 }
  )
})
