import { SOURCES } from '../../formula/source.ts'
import { notJudged, plainly } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'

interface Subject {
  /** As the job names it. */
  readonly medium: string
  readonly gas: 'liquid' | 'inert' | 'air' | 'oxygen' | 'fuel' | 'other' | 'unsure'
  /** What is or was behind the metal; null where nobody said. */
  readonly behind: string | null
  /** Whether that burns, or its vapour does. */
  readonly burns: 'yes' | 'no' | 'unsure'
}

const AT = ['ask-first', 'leak-test', 'medium']

/** Oxygen is no gas for a test, nor is one that burns, whatever is behind the metal; where fuel is or was, only an inert one is. No published source, the practice of every shop. */
export const testGas: Rule<Subject> = {
  id: 'leak/test-gas',
  question: 'is the leak test made with nothing that burns or feeds a fire?',
  why: 'Oil goes up in oxygen under pressure, a gas that burns finds its spark where it leaks, and what is left of fuel makes an explosive mixture with air.',
  change: "test with nitrogen, or with what the maker's manual names",
  source: SOURCES.practice,
  judge: judged
}

function judged(subject: Subject): Judged {
  const { medium, gas, behind, burns } = subject
  if (gas === 'oxygen') return said('fail', `${medium}: never oxygen, a smear of oil or grease is enough for a fire`)
  if (gas === 'fuel') return said('fail', `${medium}: never a gas that burns, what leaks goes up at the first spark`)
  if (gas === 'liquid') return said('pass', `${medium}: a liquid, and no gas`)
  if (gas === 'inert') return said('pass', `${medium}: an inert gas`)
  if (behind === null) return notJudged('behind-the-metal', 'ask what is behind the metal, or was', AT)
  if (burns === 'yes' && gas !== 'unsure')
    return said('fail', `${medium} is no inert gas, and "${behind}" burns, or what is left of it does`)
  if (burns === 'no' && gas === 'air') return said('pass', `${medium}, and "${behind}" does not burn`)
  return said('caution', doubtOf(subject))
}

function doubtOf({ medium, gas, behind }: Subject): string {
  if (gas === 'unsure')
    return `"${medium}" does not tell whether it is a gas, and which: no oxygen, and where fuel is or was an inert gas alone`
  if (gas === 'air') return `"${behind}" does not tell whether it burns: where it does, or its vapour, no air goes in`
  return `${medium} is no inert gas, and nobody has said that it may go in`
}

function said(verdict: Judged['verdict'], says: string): Judged {
  return plainly(verdict, says, AT)
}
