// Lockwire, inches; sources differ.
export const LOCKWIRE_ROWS = [
  {
    item: '0.032 in wire, twists per inch',
    least: '6',
    greatest: '8',
    source: 'AC 43.13-1B as quoted in an encyclopedia passage and a club forum',
    label: 'read-secondary'
  },
  {
    item: '0.020-0.025 in wire, twists per inch',
    least: '8',
    greatest: '14',
    source: 'second guide quoted in the same passage',
    label: 'read-secondary'
  },
  {
    item: '0.032-0.041 in wire, twists per inch',
    least: '6',
    greatest: '11',
    source: 'second guide quoted in the same passage',
    label: 'read-secondary'
  },
  {
    item: '0.051-0.060 in wire, twists per inch',
    least: '4',
    greatest: '8',
    source: 'second guide quoted in the same passage',
    label: 'read-secondary'
  },
  {
    item: '0.020 in wire, twists per inch',
    least: '10',
    greatest: '13',
    source: 'light-aircraft maintenance manual page (prints 0.20 in / 0.5 mm)',
    label: 'read'
  },
  { item: '0.032 in wire, twists per inch', least: '6', greatest: '12', source: 'light-aircraft maintenance manual page', label: 'read' },
  {
    item: 'minimum wire where hole > 0.045 in (in)',
    least: '0.032',
    greatest: '',
    source: 'AC 43.13-1B as quoted in a magazine and a forum; TM 1-1500-204-23-6',
    label: 'read-secondary'
  },
  {
    item: '0.020 in wire allowed: hole (in)',
    least: '0.045',
    greatest: '0.062',
    source: 'AC 43.13-1B as quoted; spacing under 2 in',
    label: 'read-secondary'
  },
  { item: 'pigtail turns', least: '4', greatest: '6', source: 'AC 43.13-1B par. 7-124 (1/2 to 5/8 in long)', label: 'read-secondary' },
  { item: 'pigtail turns', least: '3', greatest: '6', source: 'TM 1-1500-204-23-6 (1/4 to 1/2 in long)', label: 'read' },
  { item: 'max span between fasteners (in)', least: '', greatest: '6', source: 'light-aircraft maintenance manual page', label: 'read' },
  { item: 'units in series', least: '', greatest: '3', source: 'trade page', label: 'read-secondary' },
  { item: 'start of twist from hole (in)', least: '', greatest: '0.109', source: 'light-aircraft maintenance manual page', label: 'read' }
] as const
