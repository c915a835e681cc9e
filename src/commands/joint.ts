import { describe, quantity, word } from './describe.ts'

export const joint = describe({
  name: 'joint',
  summary: 'does it hold: shear areas, strip loads, preload, lowest and highest torque',
  rows: {
    thread: word('T', 'the thread, as M12x1.5 or 3/8-24 UNF', { required: true }),
    engagement: quantity('length', 'L', 'full threads engaged: chamfers of tap, part and mouth taken off', { required: true }),
    casting: word('ALLOY|STRENGTH', 'the casting: an alloy, as A380, or its shear strength, as "160 MPa"', { required: true }),
    part: word('CLASS|STRENGTH', 'the part: a property class, as 8.8, or its tensile strength, as "360 MPa"', { required: true }),
    proof: quantity('stress', 'STRENGTH', 'proof stress of the part; a class has its own'),
    clamp: quantity('force', 'FORCE', 'least clamping force wanted'),
    torque: quantity('torque', 'Q', 'torque it is tightened to'),
    'nut-factor': quantity('factor', 'K', 'nut factor of thread and shoulder together'),
    'thread-friction': quantity('factor', 'MU', 'friction in the thread'),
    'bearing-friction': quantity('factor', 'MU', 'friction under the shoulder'),
    'bearing-diameter': quantity('length', 'L', 'mean bearing diameter, (face + hole)/2'),
    'bearing-face': quantity('length', 'L', 'diameter of the face that bears: the lesser of shoulder and terminal'),
    'bearing-hole': quantity('length', 'L', 'hole of what lies under the shoulder'),
    neck: quantity('length', 'L', 'diameter of the neck between shoulder and thread', { least: 0 }),
    bore: quantity('length', 'L', 'bore through the part')
  },
  examples: [
    'joint --thread M12x1.5 --engagement "9 mm" --casting A380 --part "360 MPa" --proof "250 MPa" --torque "9 N·m" --nut-factor 0.14..0.20 --neck "10 mm" --bore "7 mm"',
    'joint --thread M10 --engagement "10 mm" --casting "120 MPa" --part 8.8 --clamp "4 kN" --thread-friction 0.12 --bearing-friction 0.12 --bearing-diameter "13 mm"'
  ],
  load: () => import('./joint.run.ts')
})
