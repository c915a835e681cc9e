import type { Given } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { nearest } from '../../quantity/near.ts'
import { quoted } from '../../quantity/quoted.ts'
import { type ClassStrength, PART_CLASSES, type PartClass } from './part-classes.ts'

/** A property class as people write it: `8.8`, `class 8.8`, `A2-70`, `a2 70`. */
export function readPartClass(text: string): Outcome<PartClass> {
  const found = PART_CLASSES.find(({ name }) => plain(name) === plain(text))
  if (found !== undefined) return good(found)
  const names = PART_CLASSES.map(({ name }) => name)
  return bad(
    `unknown property class ${quoted(text)}`,
    `one of ${names.join(', ')}, or a tensile strength, as "360 MPa"`,
    nearest(text.trim(), names)
  )
}

function plain(text: string): string {
  return text.toLowerCase().replace(/class|[\s-]/g, '')
}

/** Nothing stretches for good only beyond where it breaks; in words, null where it can be. */
export function proofAbove(proofMpa: Given, tensileMpa: Given): string | null {
  return proofMpa.low > tensileMpa.high
    ? `a proof stress of ${proofMpa.value} MPa above a tensile strength of ${tensileMpa.value} MPa`
    : null
}

/** What a class promises for one size of thread. */
export function classStrength({ partClass, majorMm }: { readonly partClass: PartClass; readonly majorMm: number }): ClassStrength {
  const found = partClass.sizes.find(({ toMajorMm }) => majorMm <= toMajorMm)
  if (found !== undefined) return found
  throw new NoAnswer(
    `property class ${partClass.name} is not defined for a thread of ${majorMm} mm`,
    'give the tensile strength and the proof stress of the part'
  )
}
