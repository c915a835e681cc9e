// property: a torque and nothing else is answered as it is with quotes around it, which goes the long way
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ran } from './run.ts'

const UNITS = ['N·m', 'Nm', 'in-lb', 'lbf·in', 'ft-lb', 'kgf·cm', 'ozf·in', 'mm', 'foo', 'in-lb#x', "N'm"]
const number = fc.oneof(
  fc.double({ min: 1e-6, max: 9e6, noNaN: true }).map(one => one.toFixed(6)),
  fc.nat(9_999_999).map(String),
  fc.constantFrom('0', '0.0', '00', '1.', '1..2', '5000000', '5000001', '0.000001', '1234567890')
)
const line = fc.tuple(number, fc.constantFrom(' ', ''), fc.constantFrom(...UNITS)).map(([figure, gap, unit]) => `${figure}${gap}${unit}`)

async function texts(lines: readonly string[]): Promise<readonly string[]> {
  return (await ran(['each'], `${lines.join('\n')}\n`)).out.trimEnd().split('\n')
}

it('whatever the number and the unit', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(line, { minLength: 1, maxLength: 20 }), async words => {
      const plain = await texts(['torque 1 N·m', ...words.map(one => `torque ${one}`)])
      const long = await texts(['torque 1 N·m', ...words.map(one => (/['#]/.test(one) ? `torque ${one}` : `torque "${one}"`))])
      expect(plain).toEqual(long)
    })
  )
})

describe('the first line', () => {
  it.each(['0 N·m', '0.001 in-lb', '155 in-lb', '9000000 N·m', '5 foo'])('of %s leaves the others as they are', async first => {
    const after = ['7 N·m', '0 N·m', '155 in-lb', '3 ft-lb']
    const plain = await texts([first, ...after].map(one => `torque ${one}`))
    expect(plain).toEqual(await texts([first, ...after].map(one => `torque "${one}"`)))
  })
})
