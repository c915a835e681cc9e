import { readdirSync, readFileSync } from 'node:fs'
import ts from 'typescript'

/** What stands in the source of a table: numbers, words, lists; a name that it uses is its own word. */
export type Cell = number | string | null | readonly Cell[] | { readonly [key: string]: Cell }

export interface ShippedTable {
  /** Room, file and name: `thread/run-out.ts REGULAR`. */
  readonly id: string
  readonly cells: Cell
  /** How many numbers are written there: a row that falls out by mistake is missed. */
  readonly count: number
}

/** Fewer numbers are constants: each of them is moved by `npm run nudge`. */
const LEAST_NUMBERS = 4
/** Facts and ranges of a formula, and what is worked out, are no tables. */
const NO_TABLE = /^(formula|fact|fewRecalled|Array\.from)$/

/** Every table of numbers at the top of a file of the trade, exported or not, as it is written there. */
export function shippedTables(root = 'src/trade'): readonly ShippedTable[] {
  return readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter(file => file.endsWith('.ts') && !file.endsWith('.d.ts'))
    .sort()
    .flatMap(file => tablesIn(file, readFileSync(`${root}/${file}`, 'utf8')))
}

export function tablesIn(file: string, text: string): readonly ShippedTable[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true)
  return source.statements.filter(ts.isVariableStatement).flatMap(({ declarationList }) =>
    declarationList.declarations.flatMap(({ name, initializer }) => {
      if (initializer === undefined || !isTable(initializer)) return []
      return [{ id: `${file} ${name.getText()}`, cells: cellOf(initializer), count: numbersUnder(initializer) }]
    })
  )
}

function isTable(node: ts.Expression): boolean {
  const inner = bare(node)
  if (ts.isArrowFunction(inner) || ts.isBinaryExpression(inner)) return false
  if (ts.isCallExpression(inner) && NO_TABLE.test(inner.expression.getText())) return false
  return numbersUnder(inner) >= LEAST_NUMBERS
}

function numbersUnder(node: ts.Node): number {
  let count = ts.isNumericLiteral(node) ? 1 : 0
  node.forEachChild(child => {
    count += numbersUnder(child)
  })
  return count
}

function bare(node: ts.Expression): ts.Expression {
  return ts.isAsExpression(node) || ts.isSatisfiesExpression(node) || ts.isParenthesizedExpression(node) ? bare(node.expression) : node
}

function cellOf(wrapped: ts.Expression): Cell {
  const node = bare(wrapped)
  if (ts.isNumericLiteral(node)) return Number(node.text)
  if (ts.isStringLiteral(node)) return node.text
  if (node.kind === ts.SyntaxKind.NullKeyword) return null
  if (ts.isArrayLiteralExpression(node)) return node.elements.map(cellOf)
  if (ts.isObjectLiteralExpression(node)) return Object.fromEntries(node.properties.flatMap(fieldOf))
  return workedOut(node) ?? givenOn(node) ?? node.getText()
}

function fieldOf(field: ts.ObjectLiteralElementLike): readonly (readonly [string, Cell])[] {
  if (!ts.isPropertyAssignment(field)) return []
  return [[ts.isStringLiteral(field.name) ? field.name.text : field.name.getText(), cellOf(field.initializer)]]
}

/** `-3`, `3 / 64`, `1 + 3 / 64`; a factor that has a name, of a unit, is left out. */
function workedOut(node: ts.Expression): number | undefined {
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken) return -Number(cellOf(node.operand))
  if (!ts.isBinaryExpression(node)) return undefined
  const [left, right] = [Number(cellOf(node.left)), Number(cellOf(node.right))]
  if (Number.isNaN(right)) return left
  switch (node.operatorToken.kind) {
    case ts.SyntaxKind.SlashToken:
      return left / right
    case ts.SyntaxKind.PlusToken:
      return left + right
    case ts.SyntaxKind.AsteriskToken:
      return left * right
    default:
      return undefined
  }
}

/** The rows that are handed on: `[…].map(row)`, `new Map([…])`; or what a row is made of: `span(0.46, 0.47)`. */
function givenOn(node: ts.Expression): Cell | undefined {
  if (ts.isNewExpression(node)) return cellOf(node.arguments![0]!)
  if (!ts.isCallExpression(node)) return undefined
  const { expression } = node
  const rows = ts.isPropertyAccessExpression(expression) ? bare(expression.expression) : undefined
  return rows !== undefined && ts.isArrayLiteralExpression(rows) ? cellOf(rows) : node.arguments.map(cellOf)
}
