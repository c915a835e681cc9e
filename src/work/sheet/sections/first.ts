import type { JobAnswer } from '../../../report/jobs-answer.ts'
import { thingName } from '../../../report/plan/thing-name.ts'
import type { Block, Notice } from '../../../report/sheet/sheet.ts'
import { cautionsOf } from '../../plan/cautions.ts'
import { scrapsOf } from '../../plan/scraps/list.ts'
import { alike } from '../alike.ts'
import type { SectionOf } from '../section.ts'

/** What fails and what is always true; then the number that scraps the part first; then what is doubtful, which may be long. What was not judged is measured next. */
export const first: SectionOf = judged => {
  const always = cautionsOf(judged).map((says): Notice => ({ level: 'caution', head: '', says, change: '' }))
  const doubts = noticesOf(judged.answer, 'caution')
  return {
    id: 'first',
    heading: 'Before anything else',
    blocks: [
      { kind: 'notices', notices: [...noticesOf(judged.answer, 'fail'), ...always] },
      ...tightest(judged),
      ...(doubts.length === 0 ? [] : [{ kind: 'notices', notices: doubts } as const])
    ]
  }
}

function noticesOf({ findings }: JobAnswer, level: Notice['level']): readonly Notice[] {
  return alike(findings.filter(({ verdict }) => verdict === level)).map(({ things, one: { rule, says, change } }) => ({
    level,
    head: `${things}, ${rule}`,
    says,
    change
  }))
}

function tightest(judged: Parameters<SectionOf>[0]): readonly Block[] {
  const [scrap] = scrapsOf(judged)
  if (scrap === undefined) return []
  const { figure, thing, says } = scrap
  return [
    {
      kind: 'numbers',
      caption: 'The number that scraps the part first',
      numbers: [{ value: figure.text, name: `${thingName(thing)}: ${figure.name}`, says }]
    }
  ]
}
