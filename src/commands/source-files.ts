import { fileURLToPath } from 'node:url'
import { SOURCES } from '../formula/source.ts'
import { namingTable } from './naming-files.ts'

/** The files of the program that name a source, without their ending. The build puts the answers in place of this. */
export function filesNaming(id: string): readonly string[] {
  return known()[id] ?? []
}

let table: ReturnType<typeof namingTable> | undefined
function known() {
  table ??= namingTable(fileURLToPath(new URL('..', import.meta.url)), Object.keys(SOURCES))
  return table
}
