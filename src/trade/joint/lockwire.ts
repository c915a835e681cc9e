import { SOURCES, type Source, type SourceId } from '../../formula/source.ts'

export interface LockwireRule {
  readonly item: string
  readonly says: string
  readonly source: Source
}

/** Rules for lockwire, in the inches of their sources. They differ for 0.032 in wire and for the pigtail: the manual of the machine decides. */
export const LOCKWIRE: readonly LockwireRule[] = (
  [
    ['0.032 in wire, twists per inch', '6 to 8', 'lockwire-ac-43.13'],
    ['0.020-0.025 in wire, twists per inch', '8 to 14', 'lockwire-guide'],
    ['0.032-0.041 in wire, twists per inch', '6 to 11', 'lockwire-guide'],
    ['0.051-0.060 in wire, twists per inch', '4 to 8', 'lockwire-guide'],
    ['0.020 in wire, twists per inch', '10 to 13', 'lockwire-light-aircraft'],
    ['0.032 in wire, twists per inch', '6 to 12', 'lockwire-light-aircraft'],
    ['minimum wire where hole > 0.045 in (in)', 'at least 0.032', 'lockwire-ac-43.13'],
    ['0.020 in wire allowed: hole (in)', '0.045 to 0.062', 'lockwire-ac-43.13'],
    ['pigtail turns', '4 to 6', 'lockwire-ac-43.13'],
    ['pigtail turns', '3 to 6', 'lockwire-tm'],
    ['max span between fasteners (in)', 'at most 6', 'lockwire-light-aircraft'],
    ['units in series', 'at most 3', 'lockwire-trade'],
    ['start of twist from hole (in)', 'at most 0.109', 'lockwire-light-aircraft']
  ] satisfies [string, string, SourceId][]
).map(([item, says, id]) => ({ item, says, source: SOURCES[id] }))
