import { SOURCES } from '../../formula/source.ts'
import { notJudged, plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** Marks of every switch, fuse and breaker. */
  readonly marks: readonly string[]
  readonly labels: { readonly [mark: string]: string | null }
}

/** Whether the next person can tell what each switch and fuse is for. */
export const missing: Rule<Subject> = {
  id: 'label/missing',
  question: 'has every switch, fuse and breaker a label?',
  why: 'Somebody in the dark pulls the fuse whose label he can read.',
  change: 'write the text of each label under circuit.labels',
  source: SOURCES.practice,
  judge: ({ marks, labels }) => {
    if (marks.length === 0) return plainly('pass', 'nothing of this circuit carries a mark')
    if (Object.keys(labels).length === 0) return notJudged('circuit.labels', `write what stands on the label of ${marks.join(', ')}`)
    const bare = marks.filter(mark => !Object.hasOwn(labels, mark) || (labels[mark] ?? '').trim() === '')
    return bare.length === 0 ? plainly('pass', `labelled: ${marks.join(', ')}`) : plainly('fail', `no label for ${bare.join(', ')}`)
  }
}
