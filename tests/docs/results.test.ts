// property: what the page of results says is what commands print
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { COMMANDS } from '../../src/commands/list.ts'
import { inExampleFolder, outputOf, wordsOf } from './example-output.ts'

interface Document {
  readonly results: { readonly [id: string]: object }
  readonly tables: { readonly [name: string]: readonly object[] }
  readonly findings: readonly object[]
  readonly jobs?: readonly { readonly results: object }[]
}

const PAGE = readFileSync('docs/results.md', 'utf8')

/** Calls that print every result there is, where the examples leave some out. */
const WHOLE: { readonly [command: string]: readonly string[] } = {
  prove: [
    'prove examples/gearbox-preheater.yaml --reading "bus TO frame=27.0 V" --reading "bus TO panel=11 mV" --reading "panel TO frame=26.99 V"'
  ],
  thread: ['thread --list', 'thread M8 --engagement 12mm', 'thread --measured 9.74mm', 'thread --measured 10.2mm --taper 1:16'],
  hole: [
    'hole --thread M10 --found-diameter 7.5mm --found-depth 22mm --metal-below 5mm --wall 4mm',
    'hole --thread M10 --found-diameter 5mm --found-depth 22mm --taps bottoming:1.5:1mm'
  ],
  dew: ['dew --air 4°C --humidity 78% --surface 5°C'],
  warm: ['warm --power 18W --mass 0.45kg --material A380 --area 0.03m2 --air 4°C --airflow 2m/s --size 60mm --target 9°C'],
  heater: ['heater --power 60W --voltage 12V --cold-multiple 2.5'],
  protect: ['protect --current 5A --wire "2.5 mm2" --fault 90A --inrush "7 A,0.1 s" --switch 15A --bus 12V'],
  joint: [
    'joint --thread M10 --engagement 10mm --casting A380 --part 8.8 --torque 9N.m --clamp 4kN --nut-factor 0.2 --bearing-face 16mm --bearing-hole 10.5mm'
  ],
  seat: [
    'seat --thread M10 --thread-length 12mm --thread-depth 11mm --stack 1mm --overall 14mm --floor-depth 13mm --need 8mm --clock-now 0° --clock-want 20° --torque-turn 40°',
    'seat --thread M10 --thread-length 12mm --thread-depth 11mm --stack 1mm --neck 9.5mm --undercut 0.8mm'
  ]
}
const SUMS = COMMANDS.filter(({ name }) => PAGE.includes(`\n### ${name}\n`))
const TAPS = /\.(taper|second|bottoming)$/

inExampleFolder()

async function documentsOf(name: string): Promise<readonly Document[]> {
  const examples = [...COMMANDS.find(one => one.name === name)!.examples, ...(WHOLE[name] ?? [])]
  const outputs = []
  for (const example of examples) outputs.push(await outputOf([...wordsOf(example), '--json']))
  return outputs.map(({ out }) => JSON.parse(out) as Document)
}

function sectionOf(heading: string): string {
  return new RegExp(`\\n### ${heading}\\n(.*?)(\\n### |$)`, 's').exec(`${PAGE}\n### `)![1]!
}

/** What stands in backticks in the first column of the tables below a heading. */
function named(section: string, kind: 'id' | 'table'): readonly string[] {
  const text = sectionOf(section)
  const [, table = ''] = new RegExp(`\\| ${kind} \\|[^\\n]*\\n\\|[-|]+\\|\\n((\\|.*\\n)*)`).exec(text) ?? []
  return table.split('\n').flatMap(row => [...(row.split(' | ')[0] ?? '').matchAll(/`([^`]+)`/g)].map(([, id]) => id!))
}

function sorted(ids: Iterable<string>): readonly string[] {
  return [...new Set(ids)].sort()
}

it('every quick sum has its section', () => {
  expect(SUMS.map(({ name }) => name)).toEqual(
    expect.arrayContaining(
      COMMANDS.map(({ name }) => name).filter(
        name =>
          ![
            'new',
            'check',
            'measure',
            'plan',
            'sheet',
            'prove',
            'explain',
            'sources',
            'schema',
            'completion',
            'each',
            'compare',
            'sweep',
            'solve'
          ].includes(name)
      )
    )
  )
})

describe.each(SUMS)('$name', ({ name }) => {
  it('the ids of the page are the ids printed', async () => {
    const ids = (await documentsOf(name)).flatMap(({ results }) => Object.keys(results))
    expect(sorted(named(name, 'id'))).toEqual(sorted(ids.map(id => id.replace(TAPS, '.NAME'))))
  })

  it('the tables of the page are the tables printed, with their columns', async () => {
    const tables = (await documentsOf(name)).flatMap(({ tables }) => Object.entries(tables))
    expect(sorted(named(name, 'table'))).toEqual(sorted(tables.map(([table]) => table)))
    for (const [table, [row = {}]] of tables)
      for (const key of Object.keys(row)) expect(rowOfPage(table, sectionOf(name)), `${table}: ${key}`).toContain(`\`${key}\``)
  })
})

function rowOfPage(name: string, page = PAGE): string {
  return page.split('\n').find(line => line.startsWith(`| \`${name}\` |`)) ?? ''
}

describe('the document', () => {
  it('has the keys that the page lists', async () => {
    const documents = [
      ...(await documentsOf('seat')),
      JSON.parse((await outputOf(['torque', '155', '--json', '--working'])).out),
      JSON.parse((await outputOf(['torque', '155 in-lb', '--json', '--working'])).out),
      JSON.parse((await outputOf(['check', 'examples/gearbox-preheater.yaml', '--json'])).out)
    ]
    const keys = sorted(documents.flatMap(document => Object.keys(document)))
    expect(keys).toEqual(sorted(keys.filter(key => rowOfPage(key) !== '')))
    expect(keys).toHaveLength(11)
  })

  it('has results, findings and places with the fields that the page names', async () => {
    const [document] = await documentsOf('seat')
    const fields = [...Object.values(document!.results), ...document!.findings].flatMap(one => Object.keys(one))
    const where = (document!.findings as readonly { readonly where: object }[]).flatMap(one => Object.keys(one.where))
    for (const field of new Set([...fields, ...where])) expect(PAGE).toContain(`\`${field}\``)
  })

  it('of a job carries ids that mean what they mean below', async () => {
    const { jobs } = JSON.parse((await outputOf(['check', 'examples/gearbox-preheater.yaml', '--json'])).out) as Document
    const ids = jobs!.flatMap(({ results }) => Object.keys(results)).map(id => id.split(':')[1]!.replace(TAPS, '.NAME'))
    expect(ids.length).toBeGreaterThan(20)
    const unknown = ids.filter(id => {
      const [command, ...rest] = id.split('.')
      return rowOfPage(id) === '' && !named(command!, 'id').includes(rest.join('.'))
    })
    expect(unknown).toEqual([])
  })
})
