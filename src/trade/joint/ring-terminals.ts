import { SOURCES, type Source, type SourceId } from '../../formula/source.ts'

export interface RingTerminal {
  readonly name: string
  readonly studMm: number
  readonly holeMm: number
  readonly tongueWidthMm: number
  readonly tongueThicknessMm: number
  readonly wireLeastMm2: number
  readonly wireGreatestMm2: number
  readonly source: Source
}

/** Ring terminals: a stack to start from. The tongue measured on the real one is what keeps the part from bottoming. */
export const RING_TERMINALS: readonly RingTerminal[] = (
  [
    ['automotive round plate LA 103', 3, 3.3, 7, 0.6, 0.5, 1.25, 'ring-terminals-automotive'],
    ['automotive round plate LA 104', 4, 4.4, 8, 0.6, 0.5, 1.25, 'ring-terminals-automotive'],
    ['automotive round plate LA 106', 6, 6.4, 12, 0.6, 0.5, 1.25, 'ring-terminals-automotive'],
    ['automotive round plate LA 108', 8, 8.4, 16, 0.6, 0.5, 1.25, 'ring-terminals-automotive'],
    ['automotive round plate LA 204', 4, 4.4, 8, 0.8, 2, 3, 'ring-terminals-automotive'],
    ['automotive round plate LA 205', 5, 5.4, 10, 0.8, 2, 3, 'ring-terminals-automotive'],
    ['automotive round plate LA 208', 8, 8.4, 16, 0.8, 2, 3, 'ring-terminals-automotive'],
    ['automotive round plate LA 210', 10, 10.4, 20, 0.8, 2, 3, 'ring-terminals-automotive'],
    ['automotive round plate LA 305', 5, 5.4, 10, 1, 5, 8, 'ring-terminals-automotive'],
    ['automotive round plate LA 306', 6, 6.4, 12, 1, 5, 8, 'ring-terminals-automotive'],
    ['automotive round plate LA 310', 10, 10.4, 20, 1, 5, 8, 'ring-terminals-automotive'],
    ['automotive round plate LA 405', 5, 5.4, 10, 1.2, 15, 15, 'ring-terminals-automotive'],
    ['automotive round plate LA 408', 8, 8.4, 16, 1.2, 15, 15, 'ring-terminals-automotive'],
    ['automotive round plate LA 410', 10, 10.4, 20, 1.2, 15, 15, 'ring-terminals-automotive'],
    ['DIN 46234 ring terminal', 5, 5.3, 10, 0.8, 0.5, 1, 'din-46234'],
    ['DIN 46234 ring terminal', 6, 6.5, 11, 0.8, 0.5, 1, 'din-46234'],
    ['DIN 46234 ring terminal', 5, 5.3, 10, 0.8, 1.5, 2.5, 'din-46234'],
    ['DIN 46234 ring terminal', 6, 6.5, 11, 0.8, 1.5, 2.5, 'din-46234'],
    ['DIN 46234 ring terminal', 4, 4.3, 8, 1, 4, 6, 'din-46234'],
    ['DIN 46234 ring terminal', 5, 5.3, 10, 1, 4, 6, 'din-46234'],
    ['DIN 46234 ring terminal', 8, 8.4, 14, 1, 4, 6, 'din-46234'],
    ['DIN 46234 ring terminal', 10, 10.5, 18, 1, 4, 6, 'din-46234'],
    ['DIN 46234 ring terminal', 6, 6.5, 11, 1.1, 10, 10, 'din-46234'],
    ['DIN 46234 ring terminal', 8, 8.4, 14, 1.1, 10, 10, 'din-46234']
  ] satisfies [string, number, number, number, number, number, number, SourceId][]
).map(([name, studMm, holeMm, tongueWidthMm, tongueThicknessMm, wireLeastMm2, wireGreatestMm2, id]) => ({
  name,
  studMm,
  holeMm,
  tongueWidthMm,
  tongueThicknessMm,
  wireLeastMm2,
  wireGreatestMm2,
  source: SOURCES[id]
}))
