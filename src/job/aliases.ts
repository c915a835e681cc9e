import { type Alias, type Document, type Node, visit } from 'yaml'

/** What each alias stands for: the last anchor of its name above it. Found in one walk, not one an alias. */
export function aliasesOf(document: Document, text: string): ReadonlyMap<Alias, Node> {
  const targets = new Map<Alias, Node>()
  if (!text.includes('*')) return targets
  const anchors = new Map<string, Node>()
  visit(document, {
    Alias: (_, alias) => {
      const target = anchors.get(alias.source)
      if (target !== undefined) targets.set(alias, target)
    },
    Value: (_, node) => {
      if (node.anchor !== undefined) anchors.set(node.anchor, node)
    }
  })
  return targets
}
