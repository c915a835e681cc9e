/** Pitches from the shoulder to the first full thread behind a regular undercut, at most: g2 of DIN 76-1 (memory). */
export const USUAL_UNDERCUT_TURNS = 3.5
