import { filesNaming } from '../../src/commands/source-files.ts'

/** The files of the program that name a source. */
export function naming(id: string): readonly string[] {
  return filesNaming(id).map(name => `src/${name}.ts`)
}
