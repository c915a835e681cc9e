import { loadName } from '../../job/circuit-names.ts'
import type { Finding } from '../../rules/finding.ts'
import { throughBody } from '../../rules/ground/through-body.ts'
import { asked } from '../../rules/rule.ts'
import { returnPoints } from '../../trade/circuit/guarding.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { isAt, type JobLoad } from './circuit-wiring.ts'

/** How a heater comes back; one that ends at another load, or at threads that were drawn, is not asked. */
export function bodyFindings({ job, circuit, fit, guards }: CircuitJudged, load: JobLoad): readonly Finding[] {
  const point = endsAt(fit, loadName(load), load)
  const returns = [circuit.source.ground, ...returnPoints(guards.wiring)]
  if (load.heater === null || !returns.includes(point)) return []
  if (guards.threads.loads.some(({ name }) => name === loadName(load))) return []
  const leaves = leavesBy(circuit, point)
  return [asked(throughBody, { load: loadName(load), point, leaves, threadsWith: job.holes[load.heater]!['threads-with'] })]
}

/** Where its current comes out, whichever way round it is drawn. */
function endsAt(fit: CircuitJudged['fit'], name: string, { from, to }: JobLoad): string {
  const own = fit.loads.find(load => load.name === name)?.way?.passes.find(pass => pass.load === name)
  return own?.turned === true ? from : to
}

/** A point where several loads end, or that is the 0 V node, is no terminal of one of them. */
function leavesBy({ source, runs, loads }: CircuitJudged['circuit'], point: string): 'by wire' | 'by a joint' | 'by its body' {
  const shared = loads.filter(one => isAt(one, point)).length > 1
  if (shared || point === source.ground) return 'by its body'
  const own = runs.filter(one => isAt(one, point) && one.threads === 'no')
  if (own.some(({ wire }) => wire !== null)) return 'by wire'
  return own.some(({ bond }) => bond !== null) ? 'by a joint' : 'by its body'
}
