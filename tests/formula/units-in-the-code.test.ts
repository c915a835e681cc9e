// property: no number is handed on under a name with another unit; the compiler cannot see this
import { readdirSync, readFileSync } from 'node:fs'
import ts from 'typescript'
import { expect, it } from 'vitest'
import { suffixOf } from '../../src/quantity/units.ts'

/** The name a value goes by, where it has one: `x.holeMm`, `holeMm`, `hole.holeMm({…})`. */
function nameOf(node: ts.Node): string | undefined {
  if (ts.isIdentifier(node)) return node.text
  if (ts.isPropertyAccessExpression(node)) return node.name.text
  if (ts.isCallExpression(node)) return nameOf(node.expression)
  return ts.isNonNullExpression(node) ? nameOf(node.expression) : undefined
}

function mismatches(file: string, text: string): string[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true)
  const found: string[] = []
  const walk = (node: ts.Node): void => {
    if ((ts.isPropertyAssignment(node) || ts.isVariableDeclaration(node)) && node.initializer !== undefined) {
      const [to, from] = [
        ts.isComputedPropertyName(node.name) ? undefined : node.name.getText().replace(/['"]/g, ''),
        nameOf(node.initializer)
      ]
      const units = [to, from].map(name => (name !== undefined && /^[a-z]/.test(name) ? suffixOf(name) : undefined))
      if (units[0] !== undefined && units[1] !== undefined && units[0] !== units[1]) found.push(`${file}: ${to} is given ${from}`)
    }
    node.forEachChild(walk)
  }
  walk(source)
  return found
}

const ROOMS = ['src/trade', 'src/fitting', 'src/formula', 'src/rules']
const files = ROOMS.flatMap(room => readdirSync(room, { recursive: true, encoding: 'utf8' }).map(name => `${room}/${name}`)).filter(name =>
  name.endsWith('.ts')
)

it.each(files)('%s', file => {
  expect(mismatches(file, readFileSync(file, 'utf8'))).toEqual([])
})

it('sees a torque put in for a length', () => {
  expect(mismatches('x.ts', 'hold({ stackMm: torqueNm }); const dropV = loopOhm({ a })')).toHaveLength(2)
})
