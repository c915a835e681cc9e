import { FORMULA_FILES, formulasOf } from '../../src/commands/formulas.ts'
import { SOURCES, type Source } from '../../src/formula/source.ts'
import { RULES } from '../../src/rules/list.ts'
import { naming } from '../meta/source-naming.ts'
import { generatedHead, pageText } from './markdown.ts'

const ABOUT = `Where every figure comes from that is not arithmetic. The label says how it was seen, and is never promoted:

- \`read\`: seen in the primary text;
- \`read-secondary\`: as somebody else quotes or reprints it;
- \`memory\`: known, and not looked up: check before you lean on it;
- \`common practice\`: what the trade does, without a published source.`

/** Every source, and what rests on it. */
export function sourcesPage(): string {
  return pageText([generatedHead('Sources', '`src/formula/source.ts`'), ABOUT, ...Object.values(SOURCES).map(sourceText)])
}

function sourceText(source: Source): string {
  const formulas = Object.entries(FORMULA_FILES).flatMap(([room, files]) =>
    formulasOf(files)
      .filter(one => one.source === source)
      .map(({ gives }) => `[${gives}](formulas/${room}.md#${gives.toLowerCase()})`)
  )
  const rules = RULES.filter(one => one.source === source).map(({ id }) => `[${id}](rules.md#${id.replace('/', '')})`)
  const files = naming(source.id).map(file => `\`${file}\``)
  const lines = [list('formulas', formulas), list('rules', rules), list('named in', files)].filter(line => line !== '')
  return [`## ${source.id}`, `${source.title}. Label: **${source.label}**.`, lines.join('\n')].join('\n\n')
}

function list(what: string, links: readonly string[]): string {
  return links.length === 0 ? '' : `- ${what}: ${links.join(', ')}`
}
