// property: the package as it is given away: it runs without any other, the licences go along, and each library has its reason
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { builtinModules } from 'node:module'
import { describe, expect, it } from 'vitest'

const { dependencies, devDependencies } = JSON.parse(readFileSync('package.json', 'utf8'))
const BUILT = readdirSync('dist').filter(file => file.endsWith('.cjs'))
const pieces: readonly { readonly inputs: readonly string[] }[] = Object.values(JSON.parse(readFileSync('dist/pieces.json', 'utf8')))
const bundled = new Set(
  pieces.flatMap(({ inputs }) => inputs.flatMap(file => /node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(file)?.[1] ?? []))
)

it('asks for no other package', () => {
  expect(BUILT.length).toBeGreaterThan(20)
  expect(dependencies).toBeUndefined()
})

it.each(BUILT)('%s imports Node and its neighbours alone', file => {
  const code = readFileSync(`dist/${file}`, 'utf8')
  const from = [...code.matchAll(/\b(?:require|import)\("([^"]+)"\)/g)].map(match => match[1]!)
  for (const name of from) {
    if (name.startsWith('./')) expect(existsSync(`dist/${name}`), name).toBe(true)
    else expect(builtinModules).toContain(name.replace(/^node:/, ''))
  }
})

describe('licences', () => {
  const parts = readFileSync('dist/THIRD-PARTY.txt', 'utf8').split(`\n\n${'-'.repeat(72)}\n\n`)

  it('of all that is inside the built files, and of nothing else', () => {
    expect(parts.map(part => part.slice(0, part.indexOf(' '))).sort()).toEqual([...bundled].sort())
  })

  it.each(parts)('%s', part => {
    const [head = ''] = part.split('\n')
    expect(head).toMatch(/\((MIT|ISC|BSD-2-Clause|BSD-3-Clause)\)$/)
    expect(part).toMatch(/copyright/i)
    expect(part).toMatch(/as is/i)
  })
})

it.each(Object.keys(devDependencies))('%s has its reason in the contributor guide', name => {
  const libraries = readFileSync('DEVELOPERS.md', 'utf8').split('## Libraries')[1]!
  expect(libraries.split('\n').some(line => line.startsWith('|') && line.split('|')[1]!.split(/[ ,]+/).includes(name))).toBe(true)
})
