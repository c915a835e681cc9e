import { Given } from '../formula/given.ts'
import { outsideLimits } from '../rules/mass/outside-limits.ts'
import { asked } from '../rules/rule.ts'
import { mass as calculation } from '../trade/mass/mass.ts'
import { readItem } from '../trade/mass/read-item.ts'
import { MASS_RESULTS } from '../work/results/mass-results.ts'
import type { Run } from './describe.ts'
import { mass as description } from './mass.ts'
import { quickSum } from './quick-sum.ts'
import { sum } from './sum.ts'

const readers = { before: (text: string) => readItem(text, ['before']), add: (text: string) => readItem(text, ['add']) }

export const run: Run = quickSum(description, readers, ({ before, add, limits }) =>
  sum({
    title: `${add.length} ${add.length === 1 ? 'change' : 'changes'}; arms grow to the rear`,
    tree: () => ({
      before,
      adds: add,
      limits: limits === null ? null : { forwardM: new Given(limits.low), rearwardM: new Given(limits.high) }
    }),
    calculation,
    results: MASS_RESULTS,
    findings: r => (limits === null ? [] : [asked(outsideLimits, { centres: [{ of: 'the centre of mass', centreM: r.centreM }], limits })])
  })
)
