import { NUMBER } from './number-text.ts'

/** One number of a quantity, as written: `± 0.2 mm` has the joint `±`. */
export interface Term {
  readonly joint: '' | '±' | '..' | '+' | '-'
  readonly negative: boolean
  readonly digits: string
  readonly unit: string
  /** Sign, number and unit as they were written. */
  readonly text: string
}

/** A unit ends where the next number begins: at `±`, at `..`, or at a sign before a digit. The minus in `in-lb` is none. */
const TERM = new RegExp(` ?(±|\\.\\.)? ?([+-]?) ?(${NUMBER}) ?(.*?) ?(?=±|\\.\\.|[+-] ?\\.?\\d|$)`, 'iy')

const MARK = /^(?:±|\.\.) ?/

/** The numbers of a folded text, in order; none where it cannot be read to its end. */
export function scan(text: string): readonly Term[] {
  const terms: Term[] = []
  TERM.lastIndex = 0
  while (TERM.lastIndex < text.length) {
    const found = TERM.exec(text)
    if (found === null || (terms.length === 0 && found[1] !== undefined)) return []
    terms.push(termOf(found, terms.length === 0))
  }
  return terms
}

function termOf([whole, mark, sign = '', digits = '', unit = '']: RegExpExecArray, first: boolean): Term {
  const joint = (mark ?? (first ? '' : sign)) as Term['joint']
  return { joint, negative: sign === '-' && joint !== '-', digits, unit, text: whole.trim().replace(MARK, '') }
}

/** The number of a term with its sign, without its unit. */
export function numberText({ negative, digits }: Term): string {
  return `${negative ? '-' : ''}${digits}`
}
