import { fact } from '../formula/formula.ts'
import { SOURCES } from '../formula/source.ts'
import { MM_PER_IN } from '../quantity/units.ts'
import type { Column } from '../report/answer.ts'
import { neighbours } from '../trade/thread/neighbours.ts'
import { readDrill } from '../trade/thread/read-drill.ts'
import type { Run } from './describe.ts'
import { drill as description } from './drill.ts'
import { quickSum } from './quick-sum.ts'
import { sum } from './sum.ts'

const diameter = fact('drillMm', { says: 'diameter', symbol: 'd', source: SOURCES.arithmetic })

const COLUMNS: readonly Column[] = [
  { key: 'place', name: 'beside it', unit: '' },
  { key: 'set', name: 'set', unit: '' },
  { key: 'name', name: 'drill', unit: '' },
  { key: 'diameter', name: 'diameter', unit: 'mm', shown: 'limit' },
  { key: 'inch', name: 'diameter', unit: 'in', shown: 'inch' }
]

export const run: Run = quickSum(description, { size: readDrill }, ({ size: { name, diameterMm } }) =>
  sum({
    title: name,
    tree: () => ({}),
    calculation: () => ({ diameterMm }),
    results: { diameter: [diameter, r => r.diameterMm] },
    tables: () => ({ neighbours: { name: 'neighbours in each set', columns: COLUMNS, rows: neighbours({ diameterMm }).map(rowOf) } })
  })
)

function rowOf({ place, set, name, diameterMm }: ReturnType<typeof neighbours>[number]) {
  return { set, name, diameter: diameterMm, inch: diameterMm / MM_PER_IN, place }
}
