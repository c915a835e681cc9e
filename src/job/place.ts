import { isAlias, isMap, isScalar, isSeq, type Node } from 'yaml'
import type { Where } from '../quantity/diagnostic.ts'
import type { Path } from './field.ts'
import type { JobText } from './yaml-text.ts'

/** The place of a path in the file: the value where it stands, else the nearest block above that does. */
export function placeOf(job: JobText, path: Path): Where {
  const node = deepest(job, path)
  const { line, col } = job.lines.linePos(node?.range?.[0] ?? 0)
  return { file: job.file, line, column: col, path: path.join('.') }
}

/** Whether something stands in the file at this very path. */
export function stands(job: JobText, path: Path): boolean {
  let node = job.document.contents as Node | null
  return path.every(key => {
    const next = child(resolved(node, job), key)
    node = next ?? null
    return next !== undefined
  })
}

function deepest(job: JobText, path: Path): Node | null {
  let node = job.document.contents as Node | null
  for (const key of path) {
    const next = child(resolved(node, job), key)
    if (next === undefined) return node
    node = next
  }
  return node
}

function resolved(node: Node | null, job: JobText): Node | null {
  return isAlias(node) ? (job.targets.get(node) ?? null) : node
}

function child(node: Node | null, key: string | number): Node | undefined {
  if (isSeq(node)) return node.items[Number(key)] as Node | undefined
  if (!isMap(node)) return undefined
  for (const { key: name, value } of node.items) if (isScalar(name) && String(name.value) === key) return value as Node | undefined
  return undefined
}
