import { describe, quantity, word } from './describe.ts'

export const seat = describe({
  name: 'seat',
  summary: 'what stops the part first: its shoulder, the end of the thread, or the floor',
  rows: {
    thread: word('T', 'the thread, as M12x1.5 or 3/8-24 UNF', { required: true }),
    'thread-length': quantity('length', 'L', 'shoulder to the last full thread of the part', { required: true }),
    'thread-depth': quantity('length', 'L', 'face to the last full thread in the hole', { required: true }),
    stack: quantity('length', 'L', 'thickness of each thing under the shoulder', { required: true, many: 'comma' }),
    overall: quantity('length', 'L', 'shoulder to the end of the part'),
    'floor-depth': quantity('length', 'L', 'face to the first thing the end of the part can touch'),
    crush: quantity('length', 'L', 'what the stack loses at card torque, in all', { default: '0 mm', why: 'a stack that does not give' }),
    mouth: quantity('length', 'L', "depth of the mouth's countersink: no thread there", {
      least: 0,
      default: '0 mm',
      why: 'no countersink'
    }),
    undercut: quantity(
      'length',
      'L',
      'plain length of the part under its shoulder (neck, undercut), to the first full thread under the shoulder',
      {
        default: '0 mm',
        why: 'threaded up to the shoulder'
      }
    ),
    neck: quantity('length', 'L', 'how wide that plain length is', { least: 0 }),
    drill: word('D', 'drill that opened the hole, which a neck may need; without it the hole is taken as narrow as its thread'),
    need: quantity('length', 'L', 'full threads to be engaged under the stack'),
    'clock-now': quantity('angle', 'DEG', 'where the connector points at the lowest torque, clockwise from any mark'),
    'clock-want': quantity('angle', 'DEG', 'where it should point, from the same mark'),
    'torque-turn': quantity('angle', 'DEG', 'how far the part turns from the lowest torque to the highest')
  },
  examples: [
    'seat --thread M12x1.5 --thread-length "13.4 ± 0.15 mm" --thread-depth "14 ± 0.2 mm" --stack "1.0 ± 0.05 mm"',
    'seat --thread M10 --thread-length "12 mm" --thread-depth "11.6 mm" --stack "0.8 mm,1.2 mm" --overall "14 mm" --floor-depth "13.5 mm" --crush "0.05 mm"'
  ],
  load: () => import('./seat.run.ts')
})
