import { SOURCE } from '../../fitting/circuit-parts.ts'
import { showNumber } from '../../quantity/show.ts'
import { pointText } from '../../trade/proof/drawn.ts'
import { isSwitchedOff } from '../../trade/proof/switched-off.ts'
import type { Proof } from './proof-of.ts'

type Drawing = Pick<Proof, 'points' | 'expected' | 'tested'>

/** What is wrong with the drawing itself: readings held against it prove nothing. */
export function drawingNotes(drawing: Drawing): readonly string[] {
  return [...shortedNote(drawing), ...idleNote(drawing)]
}

/** No load that is meant takes more than half of what its source gives. */
const LEFT_SHARE = 0.5

/** The bus is the first of the points. */
function shortedNote({ expected, tested }: Drawing): readonly string[] {
  const source = tested.network.elements.find(({ id }) => id === SOURCE)
  const busV = expected[0]!.value
  if (source?.kind !== 'source' || Math.abs(busV) >= LEFT_SHARE * Math.abs(source.sourceV.value)) return []
  const [left, whole] = [busV, source.sourceV.value].map(volts => showNumber(volts, 'reading'))
  return [
    `as drawn ${left} V of ${whole} V are left at the bus: its source is shorted; draw with state: open every switch that is off while the others are on`
  ]
}

const LEAST_A = 1e-3

/** A circuit that was not drawn to its end proves nothing; what is switched off was drawn. */
function idleNote({ points, expected, tested }: Drawing): readonly string[] {
  const idle = points.filter(
    (point, i) => point.takes === 'amps' && Math.abs(expected[i]!.value) < LEAST_A && !isSwitchedOff(tested, point)
  )
  if (idle.length === 0) return []
  return [`as drawn no current flows ${idle.map(point => `from ${pointText(point)}`).join(', nor ')}: draw every run there and back`]
}
