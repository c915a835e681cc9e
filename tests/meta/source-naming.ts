import { SOURCE_FILES } from './source-files.ts'

/** The files of the program that name a source: by `SOURCES`, or by its id in a row of a table. A plain word alone may mean something else. */
export function naming(id: string): readonly string[] {
  const escaped = id.replaceAll('.', '\\.')
  const forms = [
    `SOURCES\\.${escaped}\\b`,
    `SOURCES\\['${escaped}'\\]`,
    `source: '${escaped}'`,
    ...(/[^a-z]/.test(id) ? [`'${escaped}'`] : [])
  ]
  const pattern = new RegExp(forms.join('|'))
  return SOURCE_FILES.filter(({ file, text }) => file !== 'src/formula/source.ts' && pattern.test(text)).map(({ file }) => file)
}
