import type { Given } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { showNumber } from '../../quantity/show.ts'
import { plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** Every fuse and breaker whose rating is known, by its mark. */
  readonly rated: readonly { readonly mark: string; readonly ratingA: Pick<Given, 'value'> }[]
  readonly labels: { readonly [mark: string]: string | null }
}

/** Whether a label that tells amperes tells those of its fuse. */
export const wrongRating: Rule<Subject> = {
  id: 'label/wrong-rating',
  question: 'does no label of a fuse or breaker tell another rating than it has?',
  why: 'Whoever fits the next fuse goes by the label, and a larger one does not save the wire.',
  change: 'write the rating of the fuse or breaker on its label, or fit the one that the label tells and have the job judged with it',
  source: SOURCES.practice,
  judge: ({ rated, labels }) => {
    const told = rated.map(one => ({ ...one, toldA: toldIn(Object.hasOwn(labels, one.mark) ? labels[one.mark]! : '') }))
    const wrong = told.filter(({ toldA, ratingA }) => toldA.length > 0 && !toldA.some(amps => isSame(amps, ratingA.value)))
    if (wrong.length === 0) return plainly('pass', 'no label tells another rating than that of its fuse or breaker')
    const isTooLarge = wrong.some(({ toldA, ratingA }) => toldA.some(amps => amps > ratingA.value))
    const says = wrong.map(
      ({ mark, ratingA, toldA }) => `the label of ${mark} tells ${toldA.map(amp).join(' and ')}, it is of ${amp(ratingA.value)}`
    )
    return plainly(isTooLarge ? 'fail' : 'caution', says.join('; '), ['circuit', 'labels', wrong[0]!.mark])
  }
}

/** `5 A`, `7.5A`, `10 amp`; neither ampere-hours nor milliamperes. */
const AMPS = /(?<![\d.,/])(\d+(?:[.,]\d+)?) ?(?:A|amps?|AMPS?|Amps?)\b(?! ?[·*]? ?h\b)/g

function toldIn(label: string | null): readonly number[] {
  return [...(label ?? '').matchAll(AMPS)].map(([, figure]) => Number(figure!.replace(',', '.')))
}

const ROUNDING = 1e-9

function isSame(a: number, b: number): boolean {
  return Math.abs(a - b) <= ROUNDING * b
}

function amp(value: number): string {
  return `${showNumber(value, 'plain')} A`
}
