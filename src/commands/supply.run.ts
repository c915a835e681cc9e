import type { BoundsOf } from '../formula/bounds.ts'
import { plainOf } from '../formula/given.ts'
import { SOURCES } from '../formula/source.ts'
import type { Diagnostic } from '../quantity/diagnostic.ts'
import type { Column, Table } from '../report/answer.ts'
import { asked } from '../rules/rule.ts'
import { endurance } from '../rules/supply/endurance.ts'
import { short } from '../rules/supply/short.ts'
import { SUPPLY_FIGURES } from '../trade/supply/margin.ts'
import { readLoad } from '../trade/supply/read-load.ts'
import { shedOrder, shedText } from '../trade/supply/shed.ts'
import { supply as calculation } from '../trade/supply/supply.ts'
import { SUPPLY_RESULTS } from '../work/results/supply-results.ts'
import type { Run } from './describe.ts'
import { quickSum } from './quick-sum.ts'
import { refusal } from './refusal.ts'
import { sum } from './sum.ts'
import { supply as description } from './supply.ts'
import type { Words } from './words.ts'

const readers = { load: readLoad }
type SupplyWords = Words<typeof description.rows, typeof readers>
type Found = BoundsOf<ReturnType<typeof calculation>>

export const run: Run = quickSum(description, readers, words => {
  const fault = faultOf(words)
  if (fault !== undefined) return fault
  return sum({
    title: `${words.output.value} A for ${words.load.length} ${words.load.length === 1 ? 'load' : 'loads'}`,
    tree: () => ({ outputA: words.output, loads: words.load, battery: batteryOf(words) }),
    calculation,
    results: SUPPLY_RESULTS,
    tables: () => ({ 'switch-off': shedTable(words) }),
    findings: r => findingsOf(words, r),
    cautions: r => cautionsOf(words, r)
  })
})

function faultOf({ load, battery, hold, 'cold-capacity': cold }: SupplyWords): readonly Diagnostic[] | undefined {
  const twice = load.find(({ name }, i) => load.findIndex(other => other.name === name) < i)
  if (twice !== undefined) return refusal('--load', `two loads named ${twice.name}`, 'a name of its own for each')
  if (battery === null && hold !== null) return refusal('--battery', '--hold without --battery', 'the capacity of the battery as well')
  if (battery === null && cold.assumed === undefined)
    return refusal('--battery', '--cold-capacity without --battery', 'the capacity of the battery as well')
  return undefined
}

function batteryOf({ battery, rate, peukert, 'cold-capacity': coldPercent }: SupplyWords) {
  return battery === null ? null : { capacityAh: battery, rateS: rate, peukertFactor: peukert, coldPercent }
}

function findingsOf({ load, hold }: SupplyWords, r: Found) {
  const subject = { phase: 'as given', outputA: r.outputA, loadA: r.loadA, marginA: r.marginA, shed: shedText(load, -r.marginA.low) }
  const held = hold === null ? null : { timeS: hold.high, says: 'as given', source: SOURCES.arithmetic }
  return [
    asked(short, subject),
    ...(held === null ? [] : [asked(endurance, { enduranceS: r.battery?.enduranceS ?? null, hold: held, loadA: r.loadA })])
  ]
}

const COLUMNS: readonly Column[] = [
  { key: 'name', name: 'load', unit: '' },
  { key: 'priority', name: 'needed', unit: '' },
  { key: 'freed', name: 'frees', unit: 'A', shown: 'current' },
  { key: 'freed-so-far', name: 'with those above', unit: 'A', shown: 'current' }
]

function shedTable({ load }: SupplyWords): Table {
  const order = shedOrder(plainOf({ loads: load }).plain.loads)
  const rows = order.map(({ name, priority, freedA, freedSoFarA }) => ({ name, priority, freed: freedA, 'freed-so-far': freedSoFarA }))
  return { name: 'what to switch off first', columns: COLUMNS, rows }
}

function cautionsOf({ 'cold-capacity': cold, battery }: SupplyWords, r: Found): readonly string[] {
  const { greatestPercent, says } = SUPPLY_FIGURES.continuousLoad
  const heavy = r.loadPercent === null || r.loadPercent.high > greatestPercent
  return [
    ...(heavy ? [`above ${greatestPercent} %: ${says}`] : []),
    SUPPLY_FIGURES.analysis.says,
    ...(battery !== null && cold.assumed !== undefined
      ? ['a lead battery holds far less in the cold: ask its maker for --cold-capacity']
      : [])
  ]
}
