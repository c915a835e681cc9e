const TAPERED = 'a tapered pipe thread: it seals by wedging, and a parallel thread neither seats nor seals in it'
const PARALLEL = 'a parallel pipe thread: its size is the bore of a pipe, not the thread'

const NAMES: readonly (readonly [pattern: RegExp, says: string])[] = [
  [/(?<![a-z])(A?NPTF?|BSPT)(?![a-z])/i, TAPERED],
  [/^Rc? ?\d+([- ]\d+)?(\/\d+)?(?!\d)/i, TAPERED],
  [/(?<![a-z])(BSPP?|NPS[MCL]?)(?![a-z])/i, PARALLEL],
  [/^(G|Rp) ?\d+([- ]\d+)?(\/\d+)?(?!\d)/i, PARALLEL]
]

/** What kind of pipe thread a designation names, where it names one: none of them is a screw thread of the parallel series. */
export function pipeNamed(text: string): string | undefined {
  return NAMES.find(([pattern]) => pattern.test(text.trim()))?.[1]
}
