import { describe, span, word } from './describe.ts'

export const mass = describe({
  name: 'mass',
  summary: 'new mass and centre of mass after parts are put on or taken off',
  rows: {
    before: word('M @ ARM', 'mass and centre before, as "742 kg @ 0.913 m"; arms grow to the rear', { required: true }),
    add: word('M @ ARM', 'a part put on; taken off with negative mass, as "-1.2 kg @ 0.6 m"', { required: true, many: 'repeat' }),
    limits: span('run', 'forward and rearward limit of the centre', { value: 'ARM..ARM' })
  },
  examples: [
    'mass --before "742.0 kg @ 0.913 m" --add "0.31 kg @ -0.42 m" --limits "0.86..0.97 m"',
    'mass --before "1636 lb ± 2 lb @ 35.9 in" --add "0.7 lb @ -16.5 in" --add "-1.1 lb @ 12 in"'
  ],
  load: () => import('./mass.run.ts')
})
