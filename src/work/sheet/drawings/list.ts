import type { Drawing } from '../../../report/drawing/drawing.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { holeSections } from './hole-sections.ts'
import { protectors } from './protectors.ts'
import { runDiagram } from './run-diagram.ts'
import { warmUp } from './warm-up.ts'

/** Drawings that a job gives; none where it does not. */
type DrawingsOf = (judged: JudgedJob) => readonly Drawing[]

const holes: DrawingsOf = judged => judged.holes.flatMap((hole, i) => holeSections(hole, i + 1))

const circuit: DrawingsOf = judged => {
  const { circuit } = judged.job
  return circuit === null ? [] : circuit.loads.map(load => runDiagram(load, circuit, judged)).filter(drawing => drawing !== undefined)
}

/** A new kind of drawing is one file and one word here. */
const DRAWINGS: readonly DrawingsOf[] = [holes, circuit, protectors, warmUp]

export function drawingsOf(judged: JudgedJob): readonly Drawing[] {
  return DRAWINGS.flatMap(of => of(judged))
}
