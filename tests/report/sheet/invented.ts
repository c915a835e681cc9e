import type { Step } from '../../../src/report/plan/plan.ts'
import { BLANK, type Sheet } from '../../../src/report/sheet/sheet.ts'

const step = (says: string, more: Partial<Step> = {}): Step => ({
  part: 'drill',
  thing: 'holes.left',
  figure: null,
  says,
  caution: null,
  blank: null,
  source: null,
  ...more
})

/** Invented: one block of each kind, all words the same. */
export function invented(words: string): Sheet {
  return {
    title: words,
    file: words,
    practice: 'general',
    verdict: 'fail',
    sections: [
      {
        id: 'all',
        heading: words,
        blocks: [
          { kind: 'text', text: words },
          { kind: 'notices', notices: [{ level: 'fail', head: words, says: words, change: words }] },
          { kind: 'numbers', caption: words, numbers: [{ value: words, name: words, says: words }] },
          { kind: 'table', caption: words, columns: [words, words, words], rows: [[words, BLANK, { text: words, note: words }]] },
          {
            kind: 'steps',
            groups: [{ heading: words, start: 3, steps: [step(words, { caution: words, blank: words, source: 'practice' }), step(words)] }]
          },
          {
            kind: 'drawing',
            drawing: {
              id: 'one',
              title: words,
              says: words,
              scale: null,
              across: 340,
              down: 100,
              shapes: [{ shape: 'text', at: [0, 50], text: words, anchor: 'start', bold: false }]
            }
          }
        ]
      }
    ]
  }
}
