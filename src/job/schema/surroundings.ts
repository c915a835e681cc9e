import { map, quantity } from '../field.ts'

/** The air that it all stands in. */
export const SURROUNDINGS = map(
  'the air it has to work in',
  {
    air: quantity('temperature', 'air on the coldest day it has to work', {
      required: true,
      example: '-18 °C ± 2 K',
      measure: 'thermometer in the shade, or the record of the place'
    }),
    humidity: quantity('percent', 'relative humidity of that air, over water at any temperature', {
      example: '85 %',
      measure: 'hygrometer beside the casting, or the weather service'
    }),
    'wet-bulb': quantity('temperature', 'ventilated wet bulb in that air, in place of the humidity', { example: '-19 °C' }),
    altitude: quantity('run', 'height above the sea', { default: '0 m', why: 'sea level', example: '420 m', measure: 'a map' }),
    airflow: quantity('speed', 'air past the casting while it must be warm', {
      example: '3 m/s',
      measure: 'anemometer beside the casting with the machine running'
    }),
    hot: quantity('temperature', 'hottest air that may stand around it', {
      example: '45 °C ± 3 K',
      measure: 'thermometer beside the casting, shut down after work on a hot day'
    }),
    metal: quantity('temperature', 'the metal in that air without any heat', {
      example: '-6 °C',
      measure: 'contact thermometer on the casting, before the start'
    })
  },
  { optional: true }
)
