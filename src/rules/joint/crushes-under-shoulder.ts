import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { bearingPressureMpa as facts } from '../../trade/joint/bearing.ts'
import type { CastMetal } from '../../trade/joint/casting-alloys.ts'
import { atMost, figure, type Lack, missing, neverFails, notJudged, plainly } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'

interface Subject {
  readonly bearingPressureMpa: Bounded | null
  readonly preloadN: Bounded | null
  /** Strengths of the casting in tension, where its alloy is known; null where none was found. */
  readonly castingMetal: { readonly metal: CastMetal; readonly tensileMpa: number; readonly yieldMpa: number | null } | null
  readonly lacks: Lack | null
  /** What is missing of the ring that bears. */
  readonly lacksRing?: Lack | null
}

/** Whether the face under the shoulder gives way: above yield it settles, above tensile strength it is pushed in. */
export const crushesUnderShoulder: Rule<Subject> = {
  id: 'joint/crushes-under-shoulder',
  question: 'does the face of the casting stand the pressure under the shoulder?',
  why: 'A face that gives way lets the clamp go, and the terminal warms.',
  change: 'put a larger or harder washer under the shoulder, or take a lower torque',
  source: SOURCES.practice,
  judge: ({ bearingPressureMpa, preloadN, castingMetal, lacks, lacksRing = null }) => {
    if (preloadN === null) return missing(lacks)
    if (bearingPressureMpa === null)
      return lacksRing === null
        ? notJudged('shoulder', 'calliper, across the face under the shoulder, and the hole of what lies under it')
        : missing(lacksRing)
    if (castingMetal === null)
      return {
        ...plainly('not-judged', UNKNOWN),
        lacks: 'casting.alloy',
        change: 'give casting.alloy; where no table here has it, a larger washer, or what the maker says that the face stands'
      }
    const { metal, tensileMpa, yieldMpa } = castingMetal
    if (metal === 'iron') return onIron(bearingPressureMpa, tensileMpa)
    if (bearingPressureMpa.high > tensileMpa)
      return atMost(facts, bearingPressureMpa, { value: tensileMpa, reason: 'tensile strength of the casting' })
    return yieldMpa === null
      ? {
          ...plainly('not-judged', noYield(bearingPressureMpa)),
          change: 'ask the maker what the face stands, or put a larger washer under the shoulder'
        }
      : neverFails(atMost(facts, bearingPressureMpa, { value: yieldMpa, reason: 'yield of the casting in tension' }))
  }
}

const UNKNOWN =
  'what the face stands is not known: its alloy is not given, or no table here has it (the mark on the casting, or the maker, who knows what the face stands)'

/** It breaks without a yield, and is pressed in at 3.5 times what it breaks at when it is pulled, or more: from memory of tables of grey iron. */
function onIron(pressureMpa: Bounded, tensileMpa: number): Judged {
  const pressed = { value: PRESSED * tensileMpa, reason: '3.5 times what grey iron stands when it is pulled; memory' }
  if (pressureMpa.high > pressed.value) return atMost(facts, pressureMpa, pressed)
  return neverFails(
    atMost(facts, pressureMpa, { value: tensileMpa, reason: 'what grey iron stands when it is pulled; pressed it stands more' })
  )
}

const PRESSED = 3.5

function noYield({ high }: Bounded): string {
  return `no yield of this casting was found in print; the pressure on its face is ${figure(high, facts)}`
}
