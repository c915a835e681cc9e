import { readdirSync, readFileSync } from 'node:fs'

/** The files below a folder that name each source: by `SOURCES`, or by its id in a row of a table. A plain word alone may mean something else. */
export function namingTable(folder: string, ids: readonly string[]): { readonly [id: string]: readonly string[] } {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map(name => name.replaceAll('\\', '/'))
    .filter(name => name.endsWith('.ts') && name !== 'formula/source.ts')
    .sort()
    .map(name => ({ name: name.replace(/\.ts$/, ''), text: readFileSync(`${folder}/${name}`, 'utf8') }))
  return Object.fromEntries(ids.map(id => [id, files.filter(({ text }) => namingOf(id).test(text)).map(({ name }) => name)]))
}

function namingOf(id: string): RegExp {
  const escaped = id.replaceAll('.', '\\.')
  const plain = /[^a-z]/.test(id) ? [`'${escaped}'`] : []
  return new RegExp([`SOURCES\\.${escaped}\\b`, `SOURCES\\['${escaped}'\\]`, `source: '${escaped}'`, ...plain].join('|'))
}
