import type { Given } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { showNumber } from '../../quantity/show.ts'
import { plainly } from '../judge.ts'
import { ampsIn } from '../label-amps.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** Every fuse and breaker whose rating is known, by its mark. */
  readonly rated: readonly { readonly mark: string; readonly ratingA: Pick<Given, 'value'> }[]
  readonly labels: { readonly [mark: string]: string | null }
}

/** Whether a label that tells amperes, or a bare rating, tells those of its fuse. */
export const wrongRating: Rule<Subject> = {
  id: 'label/wrong-rating',
  question: 'does no label of a fuse or breaker tell another rating than it has?',
  why: 'Whoever fits the next fuse goes by the label, and a larger one does not save the wire.',
  change: 'write the rating of the fuse or breaker on its label, or fit the one that the label tells and have the job judged with it',
  source: SOURCES.practice,
  judge: ({ rated, labels }) => {
    const told = rated.map(one => ({ ...one, toldA: ampsIn((Object.hasOwn(labels, one.mark) ? labels[one.mark] : null) ?? '', one.mark) }))
    const wrong = told.filter(one => isOver(one) || isOther(one))
    if (wrong.length === 0)
      return plainly(
        'pass',
        'no label tells another figure in A than its fuse or breaker is of, nor a bare one right behind "fuse", "breaker", "size", "rating" or "max"'
      )
    const says = wrong.map(
      ({ mark, ratingA, toldA }) => `the label of ${mark} tells ${toldA.map(amp).join(' and ')}, it is of ${amp(ratingA.value)}`
    )
    return plainly(wrong.some(isOver) ? 'fail' : 'caution', says.join('; '), ['circuit', 'labels', wrong[0]!.mark])
  }
}

interface Told {
  readonly toldA: readonly number[]
  readonly ratingA: Pick<Given, 'value'>
}

/** Whoever reads two figures fits the greater. */
function isOver({ toldA, ratingA: { value } }: Told): boolean {
  return toldA.some(amps => amps > value && !isSame(amps, value))
}

function isOther({ toldA, ratingA: { value } }: Told): boolean {
  return toldA.length > 0 && !toldA.some(amps => isSame(amps, value))
}

const ROUNDING = 1e-9

function isSame(a: number, b: number): boolean {
  return Math.abs(a - b) <= ROUNDING * b
}

function amp(value: number): string {
  return `${showNumber(value, 'plain')} A`
}
