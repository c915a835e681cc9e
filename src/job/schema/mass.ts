import { list, map, quantity, span, text } from '../field.ts'

const ARM = { example: '2.31 m', measure: 'tape from the datum, plumbed down' } as const

/** Mass and moment of the machine. Arms grow to the rear. */
export const MASS = map(
  'mass and centre of the machine; arms grow to the rear',
  {
    before: map(
      'the machine before the work',
      {
        mass: quantity('mass', 'its mass', { required: true, example: '11200 kg', measure: 'weighbridge, or its papers' }),
        arm: quantity('run', 'its centre', { required: true, ...ARM })
      },
      { required: true }
    ),
    adds: list(
      'what is put on, and with negative mass what is taken off',
      map('a change', {
        what: text('what it is', { required: true, example: 'wiring' }),
        part: text('the part of this file that it is: its mass is taken', { example: 'cartridge' }),
        mass: quantity('mass', 'its mass, negative where it is taken off', { example: '0.6 kg', measure: 'scales' }),
        arm: quantity('run', 'where it sits', { required: true, ...ARM })
      })
    ),
    loads: list(
      'what is carried or not: the two loadings that try the limits hardest are judged',
      map('a load', {
        what: text('what it is', { required: true, example: 'diesel' }),
        least: quantity('mass', 'least', { required: true, example: '0 kg' }),
        greatest: quantity('mass', 'greatest', { required: true, example: '180 kg' }),
        arm: quantity('run', 'where it sits', { required: true, ...ARM })
      })
    ),
    limits: span('run', 'forward and rearward limit of the centre', { example: '2.2..2.5 m', measure: 'papers of the machine' })
  },
  { optional: true }
)
