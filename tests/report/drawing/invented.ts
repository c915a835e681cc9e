import type { Section } from '../../../src/report/drawing/section.ts'

/** Invented: a cored hole 8 mm wide and 20 deep, opened to 10 mm with a tip at 18 and full diameter to 15, 10 mm of thread M12, wall 6 beside it, 25 to the back. */
export const BOSS: Section = {
  title: 'A hole in section',
  says: 'an old hole, opened and tapped',
  found: [
    [0, 20],
    [4, 20],
    [4, 0]
  ],
  drilled: [
    [0, 18],
    [5, 15],
    [5, 0]
  ],
  thread: { majorMm: 12, depthMm: 10 },
  backMm: 25,
  sideMm: 10,
  part: null,
  marks: [
    { depthMm: 10, text: '10.00 full thread' },
    { depthMm: 18, text: '18.00 tip' }
  ]
}

/** The same with a part seated on a terminal of 1 mm. */
export const SEATED: Section = { ...BOSS, part: { majorMm: 12, minorMm: 10, threadEndMm: 9, endMm: 11, stackMm: 1 } }
