import { type Alias, isAlias, isMap, isScalar, isSeq, type Node, type Pair, type YAMLMap } from 'yaml'
import { Given } from '../formula/given.ts'
import type { Diagnostic } from '../quantity/diagnostic.ts'
import { bad, type Fault } from '../quantity/fault.ts'
import { nearest } from '../quantity/near.ts'
import { parseQuantity } from '../quantity/parse-quantity.ts'
import { quoted } from '../quantity/quoted.ts'
import { blankOf } from './blank.ts'
import { type Field, type Fields, LEFT_OUT, type MapField, type NamedField, type Path, type ScalarField } from './field.ts'
import { homesOf } from './field-homes.ts'
import { otherName } from './other-names.ts'
import { describe, kindOf, readScalar } from './read-scalar.ts'
import { type JobText, spot } from './yaml-text.ts'

/** Reads a document by its fields and gathers every fault of it. */
export class FieldReader {
  readonly errors: Diagnostic[] = []
  private visited = 0
  private readonly merging = new Set<Node>()
  private readonly job: JobText

  constructor(job: JobText) {
    this.job = job
  }

  read(field: Field, node: Node | null, path: Path): unknown {
    if (this.spent(node, path)) return null
    const target = isAlias(node) ? this.job.targets.get(node) : node
    if (target === undefined)
      return this.refuse(
        bad(`the alias ${quoted((node as Alias).source)} without its anchor`, 'an anchor (&name) above the alias').fault,
        node,
        path
      )
    if (field.is === 'map') return this.map(field, target, path)
    if (field.is === 'named') return this.named(field, target, path)
    if (field.is === 'list') return this.list(field.of, target, path)
    return this.scalar(field, target, path)
  }

  private map(field: MapField, node: Node | null, path: Path): unknown {
    if (node !== null && !isMap(node))
      return this.refuse(bad(kindOf(node), `fields: ${Object.keys(field.of).join(', ')}`).fault, node, path)
    const found = node === null ? NOTHING : this.knownIn(node, field, path)
    const read = blankOf(field)
    read.path = path
    for (const name of Object.keys(field.of)) read[name] = this.inMap(field.of[name]!, name, found.get(name), node, path)
    return read
  }

  /** What stands under the names of the form; any other name is a fault. */
  private knownIn(node: YAMLMap, { of }: MapField, path: Path): ReadonlyMap<string, Node | null> {
    const found = new Map<string, Node | null>()
    for (const { key, name, value } of this.pairsOf(node, path))
      if (Object.hasOwn(of, name)) found.set(name, value)
      else this.unknown(name, key, of, path)
    return found
  }

  /** A field of a map: read where it stands, else its default, else null; a required one is missed at its map. */
  private inMap(field: Field, name: string, node: Node | null | undefined, parent: Node | null, path: Path): unknown {
    if (node !== undefined) return this.read(field, node, [...path, name])
    if (field.is === 'map' && field.optional !== true && field.required !== true) return this.map(field, null, [...path, name])
    if (field.is === 'named') return Object.create(null)
    if (field.is === 'list') return LEFT_OUT
    if (field.required === true) return this.refuse(bad(`no ${name}`, describe(field)).fault, parent, [...path, name])
    return 'default' in field && field.default !== undefined ? this.defaulted(field, field.default, [...path, name]) : null
  }

  private defaulted(field: Field, text: string, path: Path): unknown {
    if (field.is !== 'quantity') return text
    const amount = parseQuantity(field.kind, text)
    if (!amount.ok) return null
    const { value, low, high } = amount.value
    return new Given(value, { low, high, assumed: `default: ${field.why}`, at: path })
  }

  private named(field: NamedField, node: Node | null, path: Path): unknown {
    const named = Object.create(null) as Record<string, unknown>
    if (node === null || !isMap(node)) {
      this.refuse(bad(kindOf(node), `names, each with its fields: ${field.says}`).fault, node, path)
      return named
    }
    for (const { key, name, value } of this.pairsOf(node, path)) {
      if (!NAME.test(name))
        this.refuse(
          bad(`the name ${quoted(name)}`, 'a name of letters, digits, spaces, + - . that begins with a letter or digit').fault,
          key,
          path
        )
      else named[name] = this.read(field.of, value, [...path, name])
    }
    return named
  }

  private list(field: Field, node: Node | null, path: Path): unknown {
    if (isSeq(node)) return node.items.map((item, i) => this.read(field, item as Node, [...path, i]))
    this.refuse(bad(kindOf(node), `a list: [${describe(field)}, …]`).fault, node, path)
    return []
  }

  private scalar(field: ScalarField, node: Node | null, path: Path): unknown {
    if (!isScalar(node) || node.value === null) return this.refuse(bad(kindOf(node), describe(field)).fault, node, path)
    if (node.tag !== undefined && !node.tag.startsWith('tag:yaml.org,2002:'))
      return this.refuse(bad('a tag', describe(field)).fault, node, path)
    const outcome = readScalar(field, typeof node.value === 'string' ? node.value : (node.source ?? String(node.value)), path)
    return outcome.ok ? outcome.value : this.refuse(outcome.fault, node, path)
  }

  /** The pairs of a map with merge keys opened out: what stands in the map itself comes last and wins. */
  private pairsOf(map: YAMLMap, path: Path): readonly NamedPair[] {
    if (this.spent(map, path)) return []
    const pairs = map.items as Pair<Node, Node | null>[]
    this.twice(pairs, path)
    const found: NamedPair[] = []
    for (const pair of pairs) if (isMerge(pair)) found.push(...this.merged(pair.value, path))
    for (const pair of pairs) if (!isMerge(pair)) this.namedPair(pair, found, path)
    return found
  }

  private namedPair({ key, value }: Pair<Node, Node | null>, found: NamedPair[], path: Path): void {
    if (isScalar(key) && typeof key.value === 'string') found.push({ name: key.value, key, value })
    else this.refuse(bad('a field name that is no text', 'a name, in quotes where it looks like a number or a list').fault, key, path)
  }

  private merged(value: Node | null, path: Path): readonly NamedPair[] {
    if (this.spent(value, path)) return []
    const target = isAlias(value) ? this.job.targets.get(value) : value
    if (isMap(target)) return this.once(target, path, () => this.pairsOf(target, path))
    if (isSeq(target)) return this.once(target, path, () => target.items.flatMap(item => this.merged(item as Node, path)))
    this.refuse(bad(kindOf(value), 'an alias of a block of fields after <<').fault, value, path)
    return []
  }

  /** A block that is merged into itself has no end. */
  private once(block: Node, path: Path, pairs: () => readonly NamedPair[]): readonly NamedPair[] {
    if (this.merging.has(block)) {
      this.refuse(bad('a block merged into itself', 'an alias of another block after <<').fault, block, path)
      return []
    }
    this.merging.add(block)
    const found = pairs()
    this.merging.delete(block)
    return found
  }

  private unknown(name: string, key: Node, fields: Fields, path: Path): void {
    const known = Object.keys(fields)
    const homes = homesOf(name)
    const accepted = homes.length === 0 ? known : [...known.slice(0, -1), `${known.at(-1)}; ${name} stands in ${homes.join(' or ')}`]
    this.refuse(bad(`the unknown field ${quoted(name)}`, accepted.join(', '), otherName(name, known) ?? nearest(name, known)).fault, key, [
      ...path,
      name
    ])
  }

  private refuse(fault: Fault, node: Node | null, path: Path): null {
    const [from, to] = node?.range ?? [0, 0]
    const length = this.job.text.slice(from, to).split('\n', 1)[0]!.length
    this.errors.push({ ...fault, ...spot(this.job, from, length, path.join('.')) })
    return null
  }

  private twice(pairs: readonly Pair<Node, Node | null>[], path: Path): void {
    const seen = new Set<unknown>()
    for (const { key } of pairs) {
      const name = isScalar(key) ? key.value : key
      if (seen.has(name)) this.refuse(bad(`the field ${quoted(String(name))} twice in one block`, 'each field once').fault, key, path)
      seen.add(name)
    }
  }

  /** Whether more was read than any job holds; told once. */
  private spent(node: Node | null, path: Path): boolean {
    if (++this.visited === MOST_NODES + 1)
      this.refuse(
        bad('more fields than a job has, or aliases that unfold without end', `at most ${MOST_NODES} fields after unfolding`).fault,
        node,
        path
      )
    return this.visited > MOST_NODES
  }
}

/** Many times more than a job has; an alias bomb has more. */
const MOST_NODES = 20_000
const NAME = /^[\p{L}\p{N}][\p{L}\p{N} +\-.]{0,39}$/u

const NOTHING: ReadonlyMap<string, Node | null> = new Map()

interface NamedPair {
  readonly name: string
  readonly key: Node
  readonly value: Node | null
}

function isMerge({ key }: Pair<Node, Node | null>): boolean {
  return isScalar(key) && key.value === '<<'
}
