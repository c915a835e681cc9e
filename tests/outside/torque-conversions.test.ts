// table: torques converted, worked from exact definitions (read-secondary). Tolerance: that of each row.
import { expect, it } from 'vitest'
import { inUnit } from '../../src/quantity/in-unit.ts'
import { parseQuantity } from '../../src/quantity/parse-quantity.ts'

it.each([
  { text: '50 lbf·in', unit: 'N·m', value: 5.649241, slack: 1e-5 },
  { text: '18 lbf·ft', unit: 'N·m', value: 24.404723, slack: 1e-5 },
  { text: '25 kgf·cm', unit: 'N·m', value: 2.451662, slack: 1e-6 },
  // A force laboratory prints 8.50745782 for 8.850745792: the page drops a digit.
  { text: '1 N·m', unit: 'lbf·in', value: 8.850746, slack: 1e-5 }
] as const)('$text is $value $unit', ({ text, unit, value, slack }) => {
  const read = parseQuantity('torque', text)
  if (!read.ok) throw new Error(read.fault.found)
  expect(Math.abs(inUnit('torque', unit, read.value.value) - value)).toBeLessThanOrEqual(slack)
})
