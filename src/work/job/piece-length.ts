import { Given } from '../../formula/given.ts'

/** How long a piece of a run is: what is known of one end moves both pieces beside it, and the run is no longer for being taken in two. */
export class PieceLength extends Given {
  readonly fromM: Given
  readonly toM: Given

  constructor(fromM: Given, toM: Given) {
    const [low, high] = fromM === toM ? [0, 0] : [Math.max(0, toM.low - fromM.high), Math.max(0, toM.high - fromM.low)]
    super(Math.max(0, toM.value - fromM.value), { low, high, assumed: toM.assumed ?? fromM.assumed, at: toM.at })
    this.fromM = fromM
    this.toM = toM
  }
}
