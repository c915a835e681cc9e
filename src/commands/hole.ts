import { choice, describe, quantity, word } from './describe.ts'

export const hole = describe({
  name: 'hole',
  summary: 'plan of a blind hole: stop setting, metal left, thread and turns of each tap',
  rows: {
    thread: word('T', 'the thread to cut, as M12x1.5 or 3/8-24 UNF', { required: true }),
    'found-diameter': quantity('length', 'L', 'diameter of the hole as found', { required: true }),
    'found-depth': quantity('length', 'L', 'from the face to where the rod stops', { required: true }),
    rod: quantity('length', 'L', 'diameter of the flat-ended rod it was felt with', { default: '0 mm', why: 'a point' }),
    bottom: choice(['flat', 'cone', 'radius'], 'old bottom of the hole', { default: 'flat', why: 'usual in a cored hole' }),
    'bottom-angle': quantity('angle', 'DEG', 'point angle of a cone bottom', {
      default: '118 ° -28 ° +22 °',
      why: 'the drills in use, 90 to 140 °'
    }),
    'bottom-radius': quantity('length', 'L', 'fillet between a flat bottom and the wall'),
    'metal-below': quantity('length', 'L', 'metal from the old tip to what lies behind'),
    wall: quantity('length', 'L', 'metal beside the hole as found'),
    'keep-clear': quantity('length', 'L', 'gap that the drill keeps from the old bottom', { default: '0.5 mm', why: 'common practice' }),
    'stop-error': quantity('length', 'L', 'how far the stop may be off, meant as ±', { least: 0, default: '0 mm', why: 'an exact stop' }),
    drill: word('L', 'the drill; without it the published tap drill'),
    point: quantity('angle', 'DEG', 'point angle of the drill', { default: '118 °', why: 'a common drill' }),
    'tap-clear': quantity('length', 'L', "from the tap's end at its stop to the end of full diameter; without it one pitch"),
    taps: word('NAME:CHAMFER,…', 'the taps in order, chamfer in pitches; with a front centre as "second:4:3mm"', {
      default: 'taper:8,second:4,bottoming:1.5',
      why: 'a hand set of three'
    }),
    need: quantity('length', 'L', 'full thread wanted in the hole')
  },
  examples: [
    'hole --thread M10 --found-diameter "7.5 mm" --found-depth "22 ± 0.3 mm" --metal-below "5 mm"',
    'hole --thread M12x1.5 --found-diameter "9.5 mm" --found-depth "20 mm ± 0.4 mm" --rod "6 mm" --bottom cone --drill "10.5 mm" --stop-error "0.2 mm" --tap-clear "0.6 mm" --need "12 mm"'
  ],
  load: () => import('./hole.run.ts')
})
