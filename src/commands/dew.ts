import { describe, quantity } from './describe.ts'

export const dew = describe({
  name: 'dew',
  summary: 'dew and frost point of moist air, and the margin of a surface in it',
  rows: {
    air: quantity('temperature', 'T', 'temperature of the air', { required: true }),
    humidity: quantity('percent', 'P', 'relative humidity over water, at any temperature'),
    wet: quantity('temperature', 'T', 'ventilated wet bulb, in place of the humidity; iced at and below 0 °C'),
    surface: quantity('temperature', 'T', 'temperature of a surface that must stay dry'),
    altitude: quantity('run', 'L', 'height above the sea', { default: '0 m', why: 'sea level' })
  },
  examples: ['dew --air "4 °C" --humidity "78 %" --surface "-6 °C"', 'dew --air "-9 °C ± 1 K" --wet "-10 °C" --altitude "640 m"'],
  load: () => import('./dew.run.ts')
})
