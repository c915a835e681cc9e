import type { Source } from '../../src/formula/source.ts'

/** A source with its label, as a link; `up`: how to get to the folder of the handbook from the page. */
export function cited({ id, title, label }: Source, up = ''): string {
  return `${title} (${label}) [${id}](${up}sources.md#${id.replaceAll('.', '')})`
}
