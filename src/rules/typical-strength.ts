/** A wall in a real casting may be half as strong as a bar cast apart (common practice). */
export const LEAST_FACTOR = 1.5

/** Why so much is wanted where the strength is that of the alloy. */
export const OF_BARS = 'and the strength is that of cast bars, not of this wall'

/** Of the least strength of a part, the greatest that it may have (VDI 2230, memory). */
export const STRONGEST_FACTOR = 1.2
