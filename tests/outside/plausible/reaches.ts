import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'

/** Every file that a file imports, and what those import, itself first. */
export function importedBy(file: string, found: Set<string> = new Set()): ReadonlySet<string> {
  if (found.has(file) || !file.endsWith('.ts')) return found
  found.add(file)
  for (const [, path] of readFileSync(file, 'utf8').matchAll(/from '(\.[^']+)'/g)) importedBy(join(dirname(file), path!), found)
  return found
}
