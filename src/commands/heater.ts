import { describe, quantity } from './describe.ts'

export const heater = describe({
  name: 'heater',
  summary: 'current and power of a heater against voltage',
  rows: {
    power: quantity('power', 'P', 'rated power, hot', { required: true }),
    voltage: quantity('voltage', 'V', 'rated voltage', { required: true }),
    at: quantity('voltage', 'V', 'voltage it runs at; without it the rated voltage'),
    count: quantity('count', 'N', 'how many, in parallel', { default: '1', why: 'one' }),
    'resistance-change': quantity('coefficient', 'PCT/K', 'rise of resistance with temperature, from 20 °C'),
    hot: quantity('temperature', 'T', 'temperature of the element in use'),
    'cold-multiple': quantity('factor', 'X', 'current at switch-on over the current when hot')
  },
  examples: [
    'heater --power "45 W ± 5 %" --voltage "24 V" --at "23.5..28.8 V"',
    'heater --power "60 W" --voltage "12 V" --at "13.8 V" --count 2 --cold-multiple 2.5'
  ],
  load: () => import('./heater.run.ts')
})
