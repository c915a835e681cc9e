import { describe, quantity, word } from './describe.ts'

export const warm = describe({
  name: 'warm',
  summary: 'how warm a heated block gets, and how soon',
  rows: {
    power: quantity('power', 'P', 'heat put in', { required: true }),
    mass: quantity('mass', 'M', 'mass of the block', { required: true }),
    material: word('NAME|HEAT', 'what it is made of, as aluminium, or its specific heat, as "900 J/kgK"', { required: true }),
    area: quantity('surface', 'A', 'surface that the air touches', { required: true }),
    air: quantity('temperature', 'T', 'temperature of the air', { required: true }),
    airflow: quantity('speed', 'V', 'air past the block; without it and without --film the air stands still'),
    size: quantity('length', 'L', 'diameter of the block, taken as a cylinder across the flow'),
    film: quantity('film', 'W/m2K', 'film coefficient, in place of airflow and size'),
    altitude: quantity('run', 'L', 'height above the sea, for the film by airflow', { default: '0 m', why: 'sea level' }),
    start: quantity('temperature', 'T', 'temperature of the block at first; without it that of the air'),
    target: quantity('temperature', 'T', 'temperature it must reach and hold')
  },
  examples: [
    'warm --power "18 W" --mass "0.45 kg" --material aluminium --area "0.030 m2" --film "20 W/m2K" --air "4 °C" --start "-6 °C" --target "3.5 °C"',
    'warm --power "60 W ± 5 %" --mass "3.2 kg" --material A380 --area "0.11 m2" --air "-15 °C ± 2 K" --airflow "2 m/s" --size "120 mm"'
  ],
  load: () => import('./warm.run.ts')
})
