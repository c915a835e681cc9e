import { UNITS_PER_PRINTED_MM } from './drawing.ts'

/** Scales a shop draws to: how many times as large as it is. */
const SCALES = [10, 8, 6, 5, 4, 3, 2.5, 2, 1.5, 1, 0.5, 0.25, 0.1]

export interface Scale {
  readonly unitsPerMm: number
  /** `4 : 1` */
  readonly text: string
}

/** The largest scale at which something of this size fits into this room. */
export function scaleFor(
  sizeMm: { readonly acrossMm: number; readonly downMm: number },
  room: { readonly across: number; readonly down: number }
): Scale {
  const fits = (times: number) =>
    sizeMm.acrossMm * times * UNITS_PER_PRINTED_MM <= room.across && sizeMm.downMm * times * UNITS_PER_PRINTED_MM <= room.down
  const times = SCALES.find(fits) ?? SCALES.at(-1)!
  return { unitsPerMm: times * UNITS_PER_PRINTED_MM, text: times >= 1 ? `${times} : 1` : `1 : ${1 / times}` }
}
