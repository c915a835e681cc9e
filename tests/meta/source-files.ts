import { readdirSync, readFileSync } from 'node:fs'

/** Every file of the program: its path from the folder of the project, and its text. */
export const SOURCE_FILES: readonly { readonly file: string; readonly text: string }[] = readdirSync('src', {
  recursive: true,
  encoding: 'utf8'
})
  .filter(name => name.endsWith('.ts'))
  .sort()
  .map(name => ({ file: `src/${name.replaceAll('\\', '/')}`, text: readFileSync(`src/${name}`, 'utf8') }))
