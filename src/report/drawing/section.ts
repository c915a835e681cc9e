/** Half the outline of a hole, from its axis outward: depth below the face at a radius. The last radius is its wall. */
export type Outline = readonly (readonly [radiusMm: number, depthMm: number])[]

/** A part seen in section: its thread, its end, what lies under its shoulder. */
export interface SectionPart {
  readonly majorMm: number
  readonly minorMm: number
  /** From the face downward: where its full thread and its end come to lie, seated. */
  readonly threadEndMm: number
  readonly endMm: number
  readonly stackMm: number
}

/** A depth that is named beside the drawing. */
export interface Mark {
  readonly depthMm: number
  readonly text: string
  /** Where there are names on both sides: the side it is named at; right where nothing is said. */
  readonly side?: 'left' | 'right'
}

/** A blind hole cut through its axis. Printers draw it to scale; nothing in here is a printer's own. */
export interface Section {
  readonly title: string
  /** The same in words, for whoever does not see it. */
  readonly says: string
  readonly found: Outline
  readonly drilled: Outline
  /** Full thread, from the face down. */
  readonly thread: { readonly majorMm: number; readonly depthMm: number } | null
  /** What lies behind the metal. */
  readonly backMm: number | null
  /** Radius of the nearest face beside the hole: drawn on one side. */
  readonly sideMm: number | null
  readonly part: SectionPart | null
  readonly marks: readonly Mark[]
}

/** What stands at one point of the section; `right` says which side of the axis. */
export type Stuff = 'outside' | 'air' | 'metal' | 'drilled' | 'thread' | 'engaged' | 'jam' | 'stack' | 'part'

/** Depth of an outline at a radius; nought beyond its wall. */
export function depthAt(outline: Outline, radiusMm: number): number {
  for (let i = 1; i < outline.length; i++) {
    const [[r0, z0], [r1, z1]] = [outline[i - 1]!, outline[i]!]
    if (radiusMm <= r1) return r1 === r0 ? z1 : z0 + ((radiusMm - r0) / (r1 - r0)) * (z1 - z0)
  }
  return 0
}

/** What is cut there, looking at a point: `acrossMm` from the axis, to the right positive, and how far below the face. */
export function stuffAt(section: Section, acrossMm: number, depthMm: number): Stuff {
  const radiusMm = Math.abs(acrossMm)
  const inPart = partAt(section, radiusMm, depthMm)
  if (inPart !== null) return inPart
  if (depthMm < 0 || (section.backMm !== null && depthMm > section.backMm)) return 'outside'
  if (section.sideMm !== null && acrossMm > section.sideMm) return 'outside'
  return inHole(section, radiusMm, depthMm)
}

function inHole({ found, drilled, thread }: Section, radiusMm: number, depthMm: number): Stuff {
  if (depthMm <= depthAt(found, radiusMm)) return 'air'
  if (depthMm <= depthAt(drilled, radiusMm)) return 'drilled'
  return thread !== null && radiusMm <= thread.majorMm / 2 && depthMm <= thread.depthMm ? 'thread' : 'metal'
}

/** The shoulder is not known: drawn half as wide again as the thread, above its stack. */
export const SHOULDER = 0.75
const SHOULDER_TALL = 0.35

function partAt(section: Section, radiusMm: number, depthMm: number): Stuff | null {
  const { part } = section
  if (part === null || depthMm > part.endMm) return null
  if (depthMm <= 0) return aboveFace(part, radiusMm, depthMm)
  if (radiusMm <= part.minorMm / 2) return 'part'
  return radiusMm <= part.majorMm / 2 && depthMm <= part.threadEndMm ? flankAt(section, radiusMm, depthMm) : null
}

/** The part's thread in the thread of the hole, in the open, or in metal that has no thread: there it jams. */
function flankAt(section: Section, radiusMm: number, depthMm: number): Stuff {
  if (section.thread !== null && depthMm <= section.thread.depthMm) return 'engaged'
  return inHole(section, radiusMm, depthMm) === 'metal' ? 'jam' : 'part'
}

function aboveFace({ majorMm, stackMm }: SectionPart, radiusMm: number, depthMm: number): Stuff | null {
  if (radiusMm > SHOULDER * majorMm || depthMm <= -stackMm - SHOULDER_TALL * majorMm) return null
  return depthMm > -stackMm && radiusMm > majorMm / 2 ? 'stack' : 'part'
}

/** How far the drawing reaches: up above the face, down, and to either side of the axis. */
export interface Extent {
  readonly topMm: number
  readonly bottomMm: number
  readonly leftMm: number
  readonly rightMm: number
}

export function extentOf({ found, drilled, thread, backMm, sideMm, part, marks }: Section): Extent {
  const radius = (outline: Outline) => outline.at(-1)?.[0] ?? 0
  const widest = Math.max(radius(found), radius(drilled), (thread?.majorMm ?? 0) / 2, part === null ? 0 : SHOULDER * part.majorMm)
  const deepest = Math.max(
    0,
    ...found.map(([, z]) => z),
    ...drilled.map(([, z]) => z),
    ...marks.map(({ depthMm }) => depthMm),
    part?.endMm ?? 0
  )
  const metalMm = 0.6 * widest
  return {
    topMm: part === null ? 0 : -part.stackMm - SHOULDER_TALL * part.majorMm,
    bottomMm: backMm === null ? deepest + metalMm : Math.max(backMm, deepest) + metalMm / 4,
    leftMm: -widest - metalMm,
    rightMm: Math.max(widest, sideMm ?? 0) + metalMm / (sideMm === null ? 1 : 4)
  }
}
