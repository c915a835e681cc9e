// Table: ring terminals, terminal screws, dry nuts and lockwire as printed.
import { expect, test } from 'vitest'
import { DRY_NUT_SOURCE, DRY_NUT_TORQUES, type NutTorque } from '../../src/trade/joint/dry-nut-torque.ts'
import { LOCKWIRE } from '../../src/trade/joint/lockwire.ts'
import { RING_TERMINALS } from '../../src/trade/joint/ring-terminals.ts'
import { TERMINAL_SCREW_SOURCE, TERMINAL_SCREWS } from '../../src/trade/joint/terminal-screws.ts'
import { DRY_NUT_ROWS } from './rows/joint-dry-nut-torque.ts'
import { LOCKWIRE_ROWS } from './rows/joint-lockwire.ts'
import { TERMINAL_ROWS, TERMINAL_SCREW_ROWS } from './rows/joint-terminals.ts'

test('as many rows as printed', () => {
  expect([RING_TERMINALS, TERMINAL_SCREWS, DRY_NUT_TORQUES, LOCKWIRE].map(rows => rows.length)).toEqual(
    [TERMINAL_ROWS, TERMINAL_SCREW_ROWS, DRY_NUT_ROWS, LOCKWIRE_ROWS].map(rows => rows.length)
  )
})

test.each(TERMINAL_ROWS.map((row, i) => ({ ...row, i })))('$terminal, $stud stud', row => {
  const { studMm, holeMm, tongueWidthMm, tongueThicknessMm, wireLeastMm2, wireGreatestMm2, source } = RING_TERMINALS[row.i]!
  expect([`M${studMm}`, holeMm, tongueWidthMm, tongueThicknessMm]).toEqual([row.stud, row.holeMm, row.widthMm, row.thicknessMm])
  expect([...new Set([wireLeastMm2, wireGreatestMm2])].join('-')).toBe(row.wireMm2)
  expect(source.label).toBe(row.label)
})

test.each(TERMINAL_SCREW_ROWS)('terminal screw $screw', row => {
  const found = TERMINAL_SCREWS.find(({ screw }) => screw === row.screw)
  expect([found?.leastNm, found?.greatestNm]).toEqual(row.torqueNm.split('-').map(Number))
  expect(TERMINAL_SCREW_SOURCE.label).toBe(row.label)
})

// 1 lbf·in = 0.1129848290276167 N·m, exact by definition.
const printed = ({ leastNm, greatestNm, limitNm }: NutTorque) =>
  [leastNm, greatestNm, limitNm].map(torqueNm => Number((torqueNm / 0.1129848290276167).toFixed(6)))

test.each(DRY_NUT_ROWS)('dry nut $thread', row => {
  const found = DRY_NUT_TORQUES.find(({ thread }) => thread === row.thread)!
  expect(printed(found.tensionNut)).toEqual([...row.tension.split('-').map(Number), row.tensionLimit])
  expect(printed(found.shearNut)).toEqual([...row.shear.split('-').map(Number), row.shearLimit])
  expect(DRY_NUT_SOURCE.label).toBe(row.label)
})

test.each(LOCKWIRE_ROWS.map((row, i) => ({ ...row, i })))('lockwire: $item', row => {
  const { item, says, source } = LOCKWIRE[row.i]!
  const numbers = [row.least, row.greatest].filter(text => text !== '')
  expect([item, source.label]).toEqual([row.item, row.label])
  expect(says.match(/[\d.]+/g)).toEqual(numbers)
})
