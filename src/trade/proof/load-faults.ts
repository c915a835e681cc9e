import { type DrawnLoad, pointText } from './drawn.ts'
import { type Fault, OPEN_OHM, resisting, withMore } from './fault.ts'

/** The soundest short there is. */
const DEAD_OHM = 1e-3
/** Between a quarter less and a quarter more it is the part that was drawn; beyond five times it is something else. */
const OTHER_PART = { least: 1.25, greatest: 5 }
/** A path beside a load that takes less than a third of its current hardly shows. */
const SHUNT_TIMES = 3

export interface LoadDuty {
  readonly resistanceOhm: number
  /** From its return to the 0 V node, in a circuit in order. */
  readonly returnOhm: number
}

/** What may be wrong with one load. */
export function loadFaults(load: DrawnLoad, ground: string, duty: LoadDuty): readonly Fault[] {
  return [openLoad(load), shorted(load, duty), ...shortsToGround(load, ground, duty), ...wrongParts(load)]
}

function openLoad({ id, name, from, to }: DrawnLoad): Fault {
  return {
    id: `open@${name}`,
    kind: 'open',
    at: pointText({ red: from, black: to }),
    says: `open: ${name}`,
    sizes: { by: 'none' },
    sizeSays: '',
    unit: '',
    changes: resisting(id, () => OPEN_OHM)
  }
}

/** A path of the resistance the size says, inside the load or at its terminals. */
function shorted({ id, name, from, to }: DrawnLoad, { resistanceOhm }: LoadDuty): Fault {
  return {
    id: `short@${name}`,
    kind: 'short',
    at: pointText({ red: from, black: to }),
    says: `short across ${name}`,
    // Above a quarter it looks like a part of more power.
    sizes: { by: 'range', low: DEAD_OHM, high: resistanceOhm / (OTHER_PART.greatest - 1) },
    sizeSays: 'resistance of the short',
    unit: 'ohm',
    changes: resisting(id, (ohm, shortOhm) => 1 / (1 / ohm + 1 / shortOhm))
  }
}

/** Where a terminal stands on the 0 V node already there is nothing to short. */
function shortsToGround({ name, from, to }: DrawnLoad, ground: string, { resistanceOhm, returnOhm }: LoadDuty): readonly Fault[] {
  if (to === ground) return []
  const fed = toGround(`${name}, ${from}`, from, ground, SHUNT_TIMES * resistanceOhm)
  const returned = toGround(`${name}, ${to}`, to, ground, SHUNT_TIMES * returnOhm)
  return SHUNT_TIMES * returnOhm > 2 * DEAD_OHM ? [fed, returned] : [fed]
}

function toGround(place: string, from: string, ground: string, highOhm: number): Fault {
  return {
    id: `short-to-ground@${place}`,
    kind: 'short-to-ground',
    at: pointText({ red: from, black: ground }),
    says: `${place} shorted to ${ground}`,
    sizes: { by: 'range', low: DEAD_OHM, high: highOhm },
    sizeSays: 'resistance of the short',
    unit: 'ohm',
    changes: (tested, shortOhm) => withMore(tested, { from, to: ground }, shortOhm)
  }
}

function wrongParts({ id, name, from, to }: DrawnLoad): readonly Fault[] {
  const { least, greatest } = OTHER_PART
  const both = [
    ['less', 1 / greatest, 1 / least],
    ['more', least, greatest]
  ] as const
  return both.map(([word, low, high]) => ({
    id: `wrong-part@${name}, ${word} resistance`,
    kind: 'wrong-part',
    at: pointText({ red: from, black: to }),
    says: `wrong part in ${name}: ${word} resistance than drawn`,
    sizes: { by: 'range', low, high },
    sizeSays: 'resistance against that drawn',
    unit: '',
    changes: resisting(id, (ohm, ohmRatio) => ohm * ohmRatio)
  }))
}
