import type { Verdict } from '../../rules/finding.ts'
import { verdictWord } from '../findings-text.ts'
import { html } from './escape.ts'
import { blockHtml } from './html-blocks.ts'
import type { Section, Sheet } from './sheet.ts'
import { styleOf } from './style.ts'

/** A sheet as one file: no script, nothing fetched, and a rule in it that lets nothing be. */
export function sheetHtml(sheet: Sheet): string {
  const { title, file, practice, verdict, sections } = sheet
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${html(title)}</title>
<style>${styleOf(title)}</style>
</head>
<body>
<header>
<h1>${html(title)}</h1>
<p class="about">${html(file)}, practice: ${html(practice)}</p>
${notice(verdict)}
<nav aria-label="Parts of this sheet"><ul>${sections.map(({ id, heading }) => `<li><a href="#${id}">${html(heading)}</a></li>`).join('')}</ul></nav>
</header>
<main>
${sections.map(sectionHtml).join('\n')}
</main>
</body>
</html>
`
}

const VERDICTS: { readonly [V in Verdict]: string } = {
  fail: 'a rule of this job fails: do not start',
  'not-judged': 'not everything could be judged: measure first what is missing',
  caution: 'nothing fails; read the cautions',
  pass: 'every rule passes, against the limits it names'
}

function notice(verdict: Verdict): string {
  return `<p class="notice ${verdict}"><span class="head">${html(verdictWord(verdict))}</span>: ${html(VERDICTS[verdict])}</p>`
}

function sectionHtml({ id, heading, blocks }: Section): string {
  return `<section class="${id}" aria-labelledby="${id}">
<h2 id="${id}">${html(heading)}</h2>
${blocks.map(blockHtml).join('\n')}
</section>`
}
