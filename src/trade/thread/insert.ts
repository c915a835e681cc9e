import * as hole from './insert-hole.ts'
import * as wall from './insert-wall.ts'

export interface Insert {
  /** Basic diameters of its tapped hole; the maker's sheet has the limits and the drill. */
  readonly majorMm: number
  readonly pitchDiameterMm: number
  /** No drill smaller than this. */
  readonly minorMm: number
  /** Taken from the wall beside the present thread. */
  readonly wallTakenMm: number
  /** The wall beside the present thread: below the first nothing can be said, from the second up nothing is lost. */
  readonly wallLeastMm: number
  readonly wallFullMm: number
  readonly lengths: readonly InsertLength[]
}

export interface InsertLength {
  /** Length of the insert in diameters of the thread. */
  readonly lengthFactor: number
  readonly lengthMm: number
  readonly threadDepthMm: number
  readonly holeDepthMm: number
}

/** Inserts are sold in these lengths, in diameters (memory). */
const LENGTH_FACTORS = [1, 1.5, 2]
/** A bottoming tap. */
const CHAMFER_TURNS = 1.5

/** The way back: the wire thread insert that gives this thread again, what hole it asks for and what it takes from the wall. */
export function insertFor(thread: { readonly majorMm: number; readonly pitchMm: number; readonly chamferTurns?: number }): Insert {
  const { majorMm, pitchMm, chamferTurns = CHAMFER_TURNS } = thread
  const insertMajorMm = hole.insertMajorMm({ majorMm, pitchMm })
  const insertWallTakenMm = wall.insertWallTakenMm({ insertMajorMm, majorMm })
  return {
    majorMm: insertMajorMm,
    pitchDiameterMm: hole.insertPitchDiameterMm({ majorMm, pitchMm }),
    minorMm: hole.insertMinorMm({ majorMm, pitchMm }),
    wallTakenMm: insertWallTakenMm,
    wallLeastMm: wall.insertWallLeastMm({ insertWallTakenMm, insertMajorMm }),
    wallFullMm: wall.insertWallFullMm({ insertWallTakenMm, insertMajorMm }),
    lengths: LENGTH_FACTORS.map(lengthFactor => lengthOf({ lengthFactor, majorMm, pitchMm, chamferTurns }))
  }
}

interface Wanted {
  readonly lengthFactor: number
  readonly majorMm: number
  readonly pitchMm: number
  readonly chamferTurns: number
}

function lengthOf({ lengthFactor, majorMm, pitchMm, chamferTurns }: Wanted): InsertLength {
  const lengthMm = lengthFactor * majorMm
  const insertThreadDepthMm = hole.insertThreadDepthMm({ insertLengthMm: lengthMm, pitchMm })
  const holeDepthMm = hole.insertHoleDepthMm({ insertThreadDepthMm, chamferTurns, pitchMm })
  return { lengthFactor, lengthMm, threadDepthMm: insertThreadDepthMm, holeDepthMm }
}
