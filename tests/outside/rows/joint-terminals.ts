// Ring terminals; the automotive ones have a hole tolerance of 0.2 mm either way.
export const TERMINAL_ROWS = [
  {
    terminal: 'Japanese automotive round plate terminal LA 103',
    stud: 'M3',
    holeMm: 3.3,
    widthMm: 7,
    thicknessMm: 0.6,
    lengthMm: 15,
    wireMm2: '0.5-1.25',
    source: 'Japanese automotive terminal table (round plate, brass), as reproduced in a marine-industry foundation report',
    label: 'read-secondary'
  },
  {
    terminal: 'Japanese automotive round plate terminal LA 104',
    stud: 'M4',
    holeMm: 4.4,
    widthMm: 8,
    thicknessMm: 0.6,
    lengthMm: 16,
    wireMm2: '0.5-1.25',
    source: 'Japanese automotive terminal table (round plate, brass), as reproduced in a marine-industry foundation report',
    label: 'read-secondary'
  },
  {
    terminal: 'Japanese automotive round plate terminal LA 106',
    stud: 'M6',
    holeMm: 6.4,
    widthMm: 12,
    thicknessMm: 0.6,
    lengthMm: 18,
    wireMm2: '0.5-1.25',
    source: 'Japanese automotive terminal table (round plate, brass), as reproduced in a marine-industry foundation report',
    label: 'read-secondary'
  },
  {
    terminal: 'Japanese automotive round plate terminal LA 108',
    stud: 'M8',
    holeMm: 8.4,
    widthMm: 16,
    thicknessMm: 0.6,
    lengthMm: 20,
    wireMm2: '0.5-1.25',
    source: 'Japanese automotive terminal table (round plate, brass), as reproduced in a marine-industry foundation report',
    label: 'read-secondary'
  },
  {
    terminal: 'Japanese automotive round plate terminal LA 204',
    stud: 'M4',
    holeMm: 4.4,
    widthMm: 8,
    thicknessMm: 0.8,
    lengthMm: 18,
    wireMm2: '2-3',
    source: 'Japanese automotive terminal table (round plate, brass), as reproduced in a marine-industry foundation report',
    label: 'read-secondary'
  },
  {
    terminal: 'Japanese automotive round plate terminal LA 205',
    stud: 'M5',
    holeMm: 5.4,
    widthMm: 10,
    thicknessMm: 0.8,
    lengthMm: 19,
    wireMm2: '2-3',
    source: 'Japanese automotive terminal table (round plate, brass), as reproduced in a marine-industry foundation report',
    label: 'read-secondary'
  },
  {
    terminal: 'Japanese automotive round plate terminal LA 208',
    stud: 'M8',
    holeMm: 8.4,
    widthMm: 16,
    thicknessMm: 0.8,
    lengthMm: 22,
    wireMm2: '2-3',
    source: 'Japanese automotive terminal table (round plate, brass), as reproduced in a marine-industry foundation report',
    label: 'read-secondary'
  },
  {
    terminal: 'Japanese automotive round plate terminal LA 210',
    stud: 'M10',
    holeMm: 10.4,
    widthMm: 20,
    thicknessMm: 0.8,
    lengthMm: 24,
    wireMm2: '2-3',
    source: 'Japanese automotive terminal table (round plate, brass), as reproduced in a marine-industry foundation report',
    label: 'read-secondary'
  },
  {
    terminal: 'Japanese automotive round plate terminal LA 305',
    stud: 'M5',
    holeMm: 5.4,
    widthMm: 10,
    thicknessMm: 1,
    lengthMm: 22,
    wireMm2: '5-8',
    source: 'Japanese automotive terminal table (round plate, brass), as reproduced in a marine-industry foundation report',
    label: 'read-secondary'
  },
  {
    terminal: 'Japanese automotive round plate terminal LA 306',
    stud: 'M6',
    holeMm: 6.4,
    widthMm: 12,
    thicknessMm: 1,
    lengthMm: 23,
    wireMm2: '5-8',
    source: 'Japanese automotive terminal table (round plate, brass), as reproduced in a marine-industry foundation report',
    label: 'read-secondary'
  },
  {
    terminal: 'Japanese automotive round plate terminal LA 310',
    stud: 'M10',
    holeMm: 10.4,
    widthMm: 20,
    thicknessMm: 1,
    lengthMm: 27,
    wireMm2: '5-8',
    source: 'Japanese automotive terminal table (round plate, brass), as reproduced in a marine-industry foundation report',
    label: 'read-secondary'
  },
  {
    terminal: 'Japanese automotive round plate terminal LA 405',
    stud: 'M5',
    holeMm: 5.4,
    widthMm: 10,
    thicknessMm: 1.2,
    lengthMm: 25,
    wireMm2: '15',
    source: 'Japanese automotive terminal table (round plate, brass), as reproduced in a marine-industry foundation report',
    label: 'read-secondary'
  },
  {
    terminal: 'Japanese automotive round plate terminal LA 408',
    stud: 'M8',
    holeMm: 8.4,
    widthMm: 16,
    thicknessMm: 1.2,
    lengthMm: 28,
    wireMm2: '15',
    source: 'Japanese automotive terminal table (round plate, brass), as reproduced in a marine-industry foundation report',
    label: 'read-secondary'
  },
  {
    terminal: 'Japanese automotive round plate terminal LA 410',
    stud: 'M10',
    holeMm: 10.4,
    widthMm: 20,
    thicknessMm: 1.2,
    lengthMm: 30,
    wireMm2: '15',
    source: 'Japanese automotive terminal table (round plate, brass), as reproduced in a marine-industry foundation report',
    label: 'read-secondary'
  },
  {
    terminal: 'DIN 46234 ring terminal',
    stud: 'M5',
    holeMm: 5.3,
    widthMm: 10,
    thicknessMm: 0.8,
    lengthMm: null,
    wireMm2: '0.5-1',
    source: 'DIN 46234',
    label: 'memory'
  },
  {
    terminal: 'DIN 46234 ring terminal',
    stud: 'M6',
    holeMm: 6.5,
    widthMm: 11,
    thicknessMm: 0.8,
    lengthMm: null,
    wireMm2: '0.5-1',
    source: 'DIN 46234',
    label: 'memory'
  },
  {
    terminal: 'DIN 46234 ring terminal',
    stud: 'M5',
    holeMm: 5.3,
    widthMm: 10,
    thicknessMm: 0.8,
    lengthMm: null,
    wireMm2: '1.5-2.5',
    source: 'DIN 46234',
    label: 'memory'
  },
  {
    terminal: 'DIN 46234 ring terminal',
    stud: 'M6',
    holeMm: 6.5,
    widthMm: 11,
    thicknessMm: 0.8,
    lengthMm: null,
    wireMm2: '1.5-2.5',
    source: 'DIN 46234',
    label: 'memory'
  },
  {
    terminal: 'DIN 46234 ring terminal',
    stud: 'M4',
    holeMm: 4.3,
    widthMm: 8,
    thicknessMm: 1,
    lengthMm: null,
    wireMm2: '4-6',
    source: 'DIN 46234',
    label: 'memory'
  },
  {
    terminal: 'DIN 46234 ring terminal',
    stud: 'M5',
    holeMm: 5.3,
    widthMm: 10,
    thicknessMm: 1,
    lengthMm: null,
    wireMm2: '4-6',
    source: 'DIN 46234',
    label: 'memory'
  },
  {
    terminal: 'DIN 46234 ring terminal',
    stud: 'M8',
    holeMm: 8.4,
    widthMm: 14,
    thicknessMm: 1,
    lengthMm: null,
    wireMm2: '4-6',
    source: 'DIN 46234',
    label: 'memory'
  },
  {
    terminal: 'DIN 46234 ring terminal',
    stud: 'M10',
    holeMm: 10.5,
    widthMm: 18,
    thicknessMm: 1,
    lengthMm: null,
    wireMm2: '4-6',
    source: 'DIN 46234',
    label: 'memory'
  },
  {
    terminal: 'DIN 46234 ring terminal',
    stud: 'M6',
    holeMm: 6.5,
    widthMm: 11,
    thicknessMm: 1.1,
    lengthMm: null,
    wireMm2: '10',
    source: 'DIN 46234',
    label: 'memory'
  },
  {
    terminal: 'DIN 46234 ring terminal',
    stud: 'M8',
    holeMm: 8.4,
    widthMm: 14,
    thicknessMm: 1.1,
    lengthMm: null,
    wireMm2: '10',
    source: 'DIN 46234',
    label: 'memory'
  }
] as const

// Terminal screws: a maker's figures for its own product, context only.
export const TERMINAL_SCREW_ROWS = [
  { screw: 'M3.5', torqueNm: '0.8-1.0', source: 'drive maker manual: terminal screw with JIS C 2805 ring terminal', label: 'read' },
  { screw: 'M4', torqueNm: '1.2-1.4', source: 'drive maker manual: terminal screw with JIS C 2805 ring terminal', label: 'read' },
  { screw: 'M6', torqueNm: '3.6-5.1', source: 'drive maker manual: terminal screw with JIS C 2805 ring terminal', label: 'read' },
  { screw: 'M8', torqueNm: '8.2-10.2', source: 'drive maker manual: terminal screw with JIS C 2805 ring terminal', label: 'read' },
  { screw: 'M12', torqueNm: '31.5-39.5', source: 'drive maker manual: terminal screw with JIS C 2805 ring terminal', label: 'read' }
] as const
