// Finds the constants in the text of a file, so that each can be moved.
import { readFileSync } from 'node:fs'
import { relative } from 'node:path'
import ts from 'typescript'

const SHARE = 0.01
/** Lists as long as this are tables: they are held against their published rows. */
const TABLE_LENGTH = 6
const COUNTED = new Set(['at', 'slice', 'toFixed', 'toPrecision'])

/** Adds what it finds to `constants`; gives the text in which every number asks whether it is the one to move. */
export function asking(path, constants) {
  const text = readFileSync(path, 'utf8')
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true)
  const numbers = []
  const visit = node => {
    if (isLeft(node)) return
    if (ts.isNumericLiteral(node) && isValue(node)) numbers.push(node)
    else ts.forEachChild(node, visit)
  }
  visit(source)
  return numbers.reduceRight((changed, node) => {
    const [start, end] = [node.getStart(), node.end]
    const line = source.getLineAndCharacterOfPosition(start).line + 1
    const k = constants.push({ file: relative('.', path), start, line, text: node.getText(), moves: movesOf(node) }) - 1
    return `${changed.slice(0, start)}globalThis.constant(${k}, ${node.getText()})${changed.slice(end)}`
  }, text)
}

/** Tables are left as they are, and so are the ranges of formulas: those stand in the handbook, and the test of the handbook notices. */
function isLeft(node) {
  if (ts.isPropertyAssignment(node)) return node.name.getText() === 'inputs'
  if (ts.isArrayLiteralExpression(node)) return node.elements.length >= TABLE_LENGTH || isRange(node)
  return ts.isTypeNode(node)
}

/** Letter, least and greatest: what several formulas have in common stands outside of them. */
function isRange({ elements }) {
  return elements.length === 3 && ts.isStringLiteral(elements[0]) && elements.slice(1).every(isNumber)
}

function isNumber(node) {
  return ts.isNumericLiteral(ts.isPrefixUnaryExpression(node) ? node.operand : node)
}

/** A number that names a place in a list is none. */
function isValue(node) {
  const { parent } = node
  return !ts.isElementAccessExpression(parent) && parent.name !== node && parent.propertyName !== node
}

/** Up, then down. What counts whole things is moved by one: a hundredth more of it is the same. */
function movesOf(node) {
  const value = Number(node.text)
  const step = counts(node) ? 1 : value === 0 ? SHARE : value * SHARE
  return [value + step, value - step]
}

function counts(node) {
  const { parent } = node
  if (ts.isPrefixUnaryExpression(parent)) return counts(parent)
  if (ts.isPropertyAssignment(parent)) return parent.name.getText() === 'length'
  if (ts.isCallExpression(parent)) return ts.isPropertyAccessExpression(parent.expression) && COUNTED.has(parent.expression.name.text)
  if (!ts.isBinaryExpression(parent)) return false
  return counts(parent) || [parent.left, parent.right].some(side => /\.(length|size)$/.test(side.getText()))
}
